/**
 * The values of a finding with the conditions of the animal in words: `open-drum, open-bulla` becomes what a person
 * says. A reason that is no list of conditions stays as it is.
 *
 * @example saidConditions({ why: 'open-bulla' }, words) // { why: 'open bulla' }
 */
export function saidConditions(
  about: Readonly<Record<string, string>>,
  words: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const said = about.why?.split(', ').map((code) => words[code])
  return said?.every((word) => word !== undefined) ? { ...about, why: said.join(', ') } : about
}
