import { head, table } from './markdown.mjs'

/** The closed list of units and what each is exactly. */
export function unitsPage({ units, sayUnit }) {
  const bases = new Map()
  for (const [unit, { dimension, per }] of Object.entries(units))
    if (per === '1' && !bases.has(dimension)) bases.set(dimension, unit)
  return [
    ...head(
      'Units',
      'The closed list of units, in UCUM spelling, as programs write them. Two units convert into each other exactly when their dimension is the same; the base of each dimension has the number 1.',
    ),
    ...table(
      ['unit', 'on paper', 'dimension', 'exactly'],
      Object.entries(units).map(([unit, { dimension, per }]) => [
        `\`${unit}\``,
        sayUnit(unit),
        dimension,
        per === '1' ? 'base' : `${per} \`${bases.get(dimension) ?? dimension}\``,
      ]),
    ),
  ]
}
