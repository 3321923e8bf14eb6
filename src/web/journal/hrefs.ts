/** The address of a case: `case:tansy` is found at /case/tansy. What waits in the holding tray is found there. */
export function caseHref(stream: string): string {
  if (stream === 'tray') return '/tray'
  return `/case/${encodeURIComponent(stream.replace(/^case:/, ''))}`
}

export function streamOfHref(id: string): string {
  return `case:${decodeURIComponent(id)}`
}

/** The page of one controlled-drug register. */
export function registerHref(stream: string): string {
  return `/settings/register/of/${encodeURIComponent(stream)}`
}

/** The page of the thing an owed row is about: its case, the tray, our results, or the register it names. */
export function owedHref({ stream, id }: { readonly stream: string; readonly id: string }): string {
  const figures = /^figures-to-approve:([a-z]+):(.*)$/.exec(id)
  if (figures) return `/results#results-${figures[1]}-${figures[2]}`
  const register = /^register-[a-z-]+:(register:.*)$/.exec(id)?.[1]
  return register === undefined ? `${caseHref(stream)}?owed=${encodeURIComponent(id)}` : registerHref(register)
}
