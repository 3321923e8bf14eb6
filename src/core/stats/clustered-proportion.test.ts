import { describe, expect, it } from 'vitest'
import { clusteredInterval } from './clustered-proportion.ts'
import { wilsonInterval } from './proportion-interval.ts'

const many = (count: number, events: number, total: number) => Array.from({ length: count }, () => ({ events, total }))

function found(clusters: Parameters<typeof clusteredInterval>[0]) {
  const result = clusteredInterval(clusters)
  if (result.kind === 'refusal') throw new Error(result.refusal.because)
  return result.answer
}

describe('the interval that knows that two ears of one animal are not two animals', () => {
  it('is Wilson’s where every animal has one ear', () => {
    const wilson = wilsonInterval({ events: 2, total: 31 })
    if (wilson.kind === 'refusal') throw new Error('31 ears are counted.')
    expect(found([...many(2, 1, 1), ...many(29, 0, 1)])).toEqual({ interval: wilson.answer, designEffect: 1 })
  })

  it('is that of half as many where both ears of every animal always agree', () => {
    const { designEffect } = found([...many(5, 2, 2), ...many(15, 0, 2)])
    expect(designEffect).toBeCloseTo((2 * 20) / 19, 12)
  })

  /*
   * R 4.2.2: e <- c(2,1,0,1,0,0,2,0,0,0); n <- c(2,2,2,1,1,2,2,1,1,1); p <- sum(e)/sum(n); m <- length(n)
   * d <- (m/(m-1)) * sum((e-p*n)^2) / (p*(1-p)*sum(n)); w <- sum(n)/d
   * prop.test(p*w, w, correct = FALSE)$conf.int
   */
  it('agrees with R’s Wilson interval over the same effective number', () => {
    const events = [2, 1, 0, 1, 0, 0, 2, 0, 0, 0]
    const totals = [2, 2, 2, 1, 1, 2, 2, 1, 1, 1]
    const { interval, designEffect } = found(events.map((one, i) => ({ events: one, total: totals[i] ?? 0 })))
    expect(designEffect).toBeCloseTo(1.6049382716049387, 12)
    expect(interval.low).toBeCloseTo(0.16312398097055505, 10)
    expect(interval.high).toBeCloseTo(0.69513461241915042, 10)
  })

  it('counts animals where nobody or everybody had it, and where there is one animal: how tied they are cannot be told', () => {
    const of = (events: number, total: number) => {
      const wilson = wilsonInterval({ events, total })
      if (wilson.kind === 'refusal') throw new Error('Somebody is counted.')
      return wilson.answer
    }
    // 0 of 12 ears of 6 dogs: up to 39 of 100, and not 24.
    expect(found(many(6, 0, 2))).toEqual({ interval: of(0, 6), designEffect: 2 })
    expect(of(0, 6).high).toBeCloseTo(0.3903, 4)
    expect(found(many(6, 2, 2))).toEqual({ interval: of(6, 6), designEffect: 2 })
    expect(found([{ events: 1, total: 2 }]).designEffect).toBe(2)
  })

  it('is refused where nobody is known', () => {
    expect(clusteredInterval([])).toEqual({ kind: 'refusal', refusal: { because: 'no-cases-yet' } })
  })
})
