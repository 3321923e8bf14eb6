import { leafletEdition } from '#content/wording/leaflet.ts'
import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { staff } from './practice.ts'

type Body = BodyOf<'agreement'>
type Taught = Body['teachBack'][number]

type Agreed = Pick<Body, 'consentBy' | 'resuscitate' | 'photographs'> & {
  readonly ears: Body['plan']['ears']
  readonly low: string
  readonly high: string
  /** Items that were said back with help; the others in the owner's own words. */
  readonly withHelp: readonly Taught['item'][]
}

const items = ['which-ear', 'two-risks', 'eye-care', 'collar', 'when-to-phone'] as const

/** What an owner of the invented practice agrees to with Dr Holm, signed on paper and bound to its plan. */
export function agreedWithOwner({ ears, low, high, withHelp, ...wishes }: Agreed): Body {
  const pounds = (amount: string) => ({ amount, currency: 'GBP' })
  const plan: Body['plan'] = {
    ears,
    mayExtend: 'phone-first',
    extension: null,
    surgeon: staff.holm,
    ceiling: pounds(high),
    leaflet: leafletEdition,
    language: 'en',
    numbers: [],
  }
  return {
    plan,
    fingerprint: fingerprintOf(plan),
    estimate: { low: pounds(low), high: pounds(high), entry: null },
    authority: 'owner',
    authorised: null,
    soundMind: 'yes',
    given: 'signed-on-paper',
    witness: null,
    signature: null,
    copy: 'on-paper',
    teachBack: items.map((item) => ({
      item,
      answer: withHelp.includes(item) ? 'with-help' : 'own-words',
      said: null,
      again: null,
    })),
    explainedBy: staff.holm,
    ...wishes,
  }
}
