/**
 * Where a continuous function is 0 between two points at which its sign differs: Brent's method (Algorithms for
 * Minimization without Derivatives, 1973, chapter 4), to the last digits of the answer.
 *
 * @example rootBetween((x) => x * x - 2, 0, 2) // 1.4142135623730951
 */
export function rootBetween(value: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high]
  let [atA, atB] = [value(a), value(b)]
  if (atA === 0) return a
  if (atB === 0) return b
  if (atA > 0 === atB > 0) throw new Error(`No change of sign between ${low} and ${high}.`)
  let [c, atC] = [a, atA]
  let step = b - a
  let before = step
  for (let round = 0; round < 300; round += 1) {
    if (Math.abs(atC) < Math.abs(atB)) {
      ;[a, b, c] = [b, c, b]
      ;[atA, atB, atC] = [atB, atC, atB]
    }
    const least = 4e-16 * Math.abs(b) + 1e-300
    const half = 0.5 * (c - b)
    if (Math.abs(half) <= least || atB === 0) return b
    const bold =
      Math.abs(before) >= least && Math.abs(atA) > Math.abs(atB) ? interpolated(a, b, c, atA, atB, atC, half) : half
    if (bold !== half && Math.abs(bold) < Math.min(1.5 * Math.abs(half), 0.5 * Math.abs(before)) && bold * half > 0) {
      before = step
      step = bold
    } else {
      step = half
      before = half
    }
    ;[a, atA] = [b, atB]
    b += Math.abs(step) > least ? step : Math.sign(half) * least
    atB = value(b)
    if (atB > 0 === atC > 0) {
      ;[c, atC] = [a, atA]
      step = b - a
      before = step
    }
  }
  return b
}

/** The step to the zero of the line or the inverse parabola through the last points. */
function interpolated(a: number, b: number, c: number, atA: number, atB: number, atC: number, half: number): number {
  const s = atB / atA
  if (a === c) return (-2 * half * s) / (1 - s)
  const q = atA / atC
  const r = atB / atC
  const above = s * (2 * half * q * (q - r) - (b - a) * (r - 1))
  const below = (q - 1) * (r - 1) * (s - 1)
  return -above / below
}
