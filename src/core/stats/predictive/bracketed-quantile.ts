/**
 * The log odds below which a distribution holds a probability: Newton steps, halved instead when they leave the bracket.
 *
 * @param below the distribution function, `density` its slope, both of log odds.
 */
export function bracketedQuantile(
  probability: number,
  below: (at: number) => number,
  density: (at: number) => number,
  bracket: { readonly low: number; readonly high: number; readonly start: number },
): number {
  let { low, high, start: at } = bracket
  for (let round = 0; round < 200 && high - low > 1e-14 * Math.max(1, Math.abs(at)); round += 1) {
    const off = below(at) - probability
    if (off > 0) high = at
    else low = at
    const next = at - off / density(at)
    if (Math.abs(next - at) < 1e-14 * Math.max(1, Math.abs(at))) break
    at = next > low && next < high ? next : (low + high) / 2
  }
  return at
}
