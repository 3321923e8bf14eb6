import { Html } from '../render/markup.ts'

/** Of 100 dots: how many are full, how many are rings with a point (seen in some studies), the others are empty rings. */
export type Dots = { readonly full: number; readonly between: number }

/**
 * A square of 100 dots in rows of ten. Full, ringed point and empty ring differ in shape, so no colour is needed; the
 * ink is that of the text around it, also where a person chose the colours of the whole machine.
 */
export function dotSquare({ full, between }: Dots, label: string): Html {
  const at = Array.from({ length: 100 }, (_, index) => ({
    x: 5 + 10 * (index % 10),
    y: 5 + 10 * Math.floor(index / 10),
  }))
  const rings = (from: number, until: number, radius: number) =>
    at
      .slice(from, until)
      .map(
        ({ x, y }) =>
          `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0-${2 * radius} 0`,
      )
      .join('')
  const path = (d: string, look: string) => (d === '' ? '' : `<path d="${d}" ${look}/>`)
  return new Html(
    `<svg class="dots" viewBox="0 0 100 100" width="160" height="160" role="img" aria-label="${label.replaceAll('&', '&amp;').replaceAll('"', '&quot;')}">` +
      path(rings(0, full, 4), 'fill="currentColor"') +
      path(rings(full, full + between, 1.6), 'fill="currentColor"') +
      path(rings(full, 100, 3.4), 'fill="none" stroke="currentColor" stroke-width="0.9"') +
      '</svg>',
  )
}
