/** The address of a case: `case:tansy` is found at /case/tansy. What waits in the holding tray is found there. */
export function caseHref(stream: string): string {
  if (stream === 'tray') return '/tray'
  return `/case/${encodeURIComponent(stream.replace(/^case:/, ''))}`
}

export function streamOfHref(id: string): string {
  return `case:${decodeURIComponent(id)}`
}
