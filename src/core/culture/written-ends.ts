import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import type { BetweenStep, Edition, Ends, TestMethod } from './breakpoint.ts'

/** The three places of a row as a standard prints them: `<=2`, `4; 8`, `>=16`. Empty where it prints none. */
export type WrittenEnds = { readonly susceptible: string; readonly between: string; readonly resistant: string }
export type EndsRefusal = {
  readonly because: 'end-not-understood'
  readonly end: keyof WrittenEnds
  readonly written: string
}

/** The signs in which each convention writes its ends. */
const signs = {
  MIC: { susceptible: '<=', resistant: { CLSI: '>=', EUCAST: '>' } },
  DISK: { susceptible: '>=', resistant: { CLSI: '<=', EUCAST: '<' } },
} as const satisfies Record<TestMethod, unknown>

const number = String.raw`\d+(?:\.\d+)?`
const step = new RegExp(`^(${number})(?:-(${number}))?(?: \\((.+)\\))?$`)
/** "Or lower" where no S stands before it: this far down. */
const lowest = '0.001'

/**
 * Reads the ends of a row. A sign of the other convention is refused: `>=4` and `>4` part the same number unlike.
 * Between the ends stands I, unless `SDD` stands before it; a step may carry the dose that it assumes.
 *
 * @example readEnds({ susceptible: '<=0.06', between: 'SDD 0.12 (10 mg/kg)', resistant: '>=0.25' }, 'MIC', 'CLSI')
 */
export function readEnds(
  { susceptible, between, resistant }: WrittenEnds,
  method: TestMethod,
  convention: Edition['convention'],
): Outcome<Ends, EndsRefusal> {
  const lower = afterSign(susceptible, signs[method].susceptible)
  if (lower === undefined) return refuse({ because: 'end-not-understood', end: 'susceptible', written: susceptible })
  const upper = afterSign(resistant, signs[method].resistant[convention])
  if (upper === undefined) return refuse({ because: 'end-not-understood', end: 'resistant', written: resistant })
  const middle = betweenOf(between)
  if (middle === undefined) return refuse({ because: 'end-not-understood', end: 'between', written: between })
  return answer({ susceptible: lower, between: middle, resistant: upper })
}

/** Null for an empty place, undefined for what is not understood. */
function afterSign(written: string, sign: string): string | null | undefined {
  const text = written.trim()
  if (text === '') return null
  return new RegExp(`^${sign} *(${number})$`).exec(text)?.[1]
}

function betweenOf(written: string): Ends['between'] | undefined {
  const text = written.trim()
  if (text === '') return null
  const named = /^(SDD|I) /.exec(text)?.[1]
  const category = named === 'SDD' ? 'SDD' : 'I'
  const listed = named ? text.slice(named.length + 1) : text
  const orLower = new RegExp(`^<= *(${number})$`).exec(listed)?.[1]
  if (orLower) return { category, steps: [{ value: lowest, upTo: orLower }] }
  const steps = listed.split(';').map((part) => stepOf(part.trim()))
  return steps.some((one) => one === null) ? undefined : { category, steps: steps.filter((one) => one !== null) }
}

function stepOf(text: string): BetweenStep | null {
  const [, value, upTo, dose] = step.exec(text) ?? []
  if (value === undefined) return null
  return { value, ...(upTo === undefined ? {} : { upTo }), ...(dose === undefined ? {} : { dose }) }
}
