/** The address of a case: `case:tansy` is found at /case/tansy. */
export function caseHref(stream: string): string {
  return `/case/${encodeURIComponent(stream.replace(/^case:/, ''))}`
}

export function streamOfHref(id: string): string {
  return `case:${decodeURIComponent(id)}`
}
