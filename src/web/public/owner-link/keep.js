/**
 * Lets the pages of this link open again on this phone without a network. A browser offers that only where it holds the
 * connection for secure; elsewhere the page needs the network, and says nothing false.
 */
if (window.isSecureContext && 'serviceWorker' in navigator) {
  navigator.serviceWorker.register('/o/worker.js', { scope: '/o/' }).then(
    () => {
      // The visit that brings the worker went past it: the page is asked for once more, to be kept.
      if (!navigator.serviceWorker.controller) {
        navigator.serviceWorker.ready.then(({ active }) => active.postMessage(location.pathname + location.search))
      }
    },
    () => {},
  )
}
