/** Keeps the app's own files on this device where the browser allows it: on this machine, or over TLS. */
export async function keepOwnFiles(): Promise<void> {
  if (!window.isSecureContext || !('serviceWorker' in navigator)) return
  await navigator.serviceWorker.register('/service-worker.js')
  // Asked once; without it the browser may clear unsent entries when the device runs out of space.
  await navigator.storage?.persist?.()
}
