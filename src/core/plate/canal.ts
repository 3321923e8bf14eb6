import type { TransverseFacts } from './facts.ts'
import { between, distance, type Point, pointsOf, sampled } from './geometry.ts'
import type { Narrowing } from './parameters.ts'

/** The canal as two matched walls, dense from the mouth to the drum. `outer` is the lateral and then ventral wall. */
export type Canal = { readonly outer: readonly Point[]; readonly inner: readonly Point[]; readonly bend: number }

const each = 6

export function canalOf(facts: TransverseFacts): Canal {
  const pairs = pointsOf(facts.canal.value)
  const outer = sampled(
    pairs.filter((_, index) => index % 2 === 0),
    each,
  )
  const inner = sampled(
    pairs.filter((_, index) => index % 2 === 1),
    each,
  )
  return { outer, inner, bend: facts.parts.value.bend }
}

/** The two walls moved outwards by an amount: the skin lining, then the cartilage. */
export function walls(canal: Canal, amount: number | ((share: number) => number)): Canal {
  const by = (index: number) =>
    typeof amount === 'number' ? amount : amount(index / Math.max(canal.outer.length - 1, 1))
  const away = (from: Point, to: Point, units: number): Point => {
    const length = distance(from, to) || 1
    return between(from, to, 1 + units / length)
  }
  return {
    ...canal,
    outer: canal.outer.map((point, index) => away(canal.inner[index] ?? point, point, by(index))),
    inner: canal.inner.map((point, index) => away(canal.outer[index] ?? point, point, by(index))),
  }
}

export type AreaLost = Readonly<Record<Exclude<Narrowing, 'could-not-see' | 'not-assessed'>, number>>

/**
 * The lumen that is left: the inner edge of the lining moves in, the cartilage stays. A share of *area* lost makes the
 * radius √(1 − s). What was not seen keeps the full outline, which is then drawn as unknown and not as open.
 */
export function lumenOf(canal: Canal, grades: { vertical: Narrowing; horizontal: Narrowing }, lost: AreaLost): Canal {
  const last = canal.outer.length - 1
  const keep = (grade: Narrowing) =>
    grade === 'could-not-see' || grade === 'not-assessed' ? 1 : Math.max(Math.sqrt(1 - lost[grade]), 0.03)
  const folds = (grade: Narrowing) => (grade === 'none' || keep(grade) === 1 ? 0 : 0.1 * keep(grade))
  const drumFree = (share: number) => Math.min(Math.max((0.985 - share) / 0.1, 0), 1)
  const pick = (of: (grade: Narrowing) => number, share: number) => {
    const blend = Math.min(Math.max((share - canal.bend) / 0.08 + 0.5, 0), 1)
    return of(grades.vertical) * (1 - blend) + of(grades.horizontal) * blend
  }
  const factor = (index: number, wave: number) => {
    const share = index / last
    const narrow = pick(keep, share) + pick(folds, share) * wave
    return 1 - (1 - narrow) * drumFree(share)
  }
  const toCentre = (point: Point, other: Point, size: number) => between(between(point, other, 0.5), point, size)
  return {
    ...canal,
    outer: canal.outer.map((point, i) => toCentre(point, canal.inner[i] ?? point, factor(i, bulge(i)))),
    inner: canal.inner.map((point, i) => toCentre(point, canal.outer[i] ?? point, factor(i, bulge(i + 4)))),
  }
}

/** Rounded folds with deep clefts between them, unequal, the same on every run. */
function bulge(index: number): number {
  const phase = (index % 7) / 7
  const height = [1, 0.55, 0.8, 1.1, 0.65][Math.floor(index / 7) % 5] ?? 1
  return height * (1 - 8 * phase * (1 - phase)) * 0.9
}

/** A stretch of the canal between two shares of its length. */
export function stretch(canal: Canal, from: number, to: number): Canal {
  const last = canal.outer.length - 1
  const cut = (line: readonly Point[]) => line.slice(Math.round(from * last), Math.round(to * last) + 1)
  return { outer: cut(canal.outer), inner: cut(canal.inner), bend: canal.bend }
}

export function centreAt(canal: Canal, share: number): Point {
  const index = Math.round(share * (canal.outer.length - 1))
  const a = canal.outer[index] ?? [0, 0]
  return between(a, canal.inner[index] ?? a, 0.5)
}
