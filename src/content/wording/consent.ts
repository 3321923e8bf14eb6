import type { AuthorityRefusal, GivingRefusal } from '#core/agreement/authority.ts'
import type { PlanChangeCode } from '#core/agreement/plan-changes.ts'
import { namesInEnglish } from './app-case.ts'
import { oddsInEnglish } from './odds.ts'
import { agreementWords } from './papers-agreement.ts'

/** Why consent is asked again, who cannot give it, and what would make it possible. */
export const consentInEnglish = {
  changes: agreementWords.changes satisfies Record<PlanChangeCode, string>,
  procedures: namesInEnglish.procedures,
  outcomes: oddsInEnglish.outcomes,
  range: agreementWords.range,
  middle: agreementWords.middle,
  noNumber: agreementWords.noNumber,
  withdrawnHow: agreementWords.takenBackHow,
  taughtItems: agreementWords.taughtItems,
  refusals: {
    sitter:
      'Whoever only looks after the animal cannot agree to an operation. Reach the owner by telephone while another of the staff listens, or let the owner authorise this person in writing. If waiting would harm the animal, a surgeon declares an emergency.',
    'somebody-else':
      'Only the owner, or somebody the owner authorised, can agree. Reach the owner by telephone while another of the staff listens, or ask for the owner’s word in writing. If waiting would harm the animal, a surgeon declares an emergency.',
    'not-named-in-household':
      'The household does not name this person as an owner who may agree. Ask, and write it in the household; or choose on what other authority this person agrees.',
    'authority-not-described':
      'It is not written how the owner authorised this person. Write who did, how, when, until when, and up to what amount.',
    'authorised-by-nobody':
      'Whoever gave the authority is not named as an owner who may agree. Choose the owner, or write it in the household.',
    'authority-without-witness':
      'An authority given by telephone needs another of the staff who heard it. Ring the owner again together, and name who listens.',
    'authority-ended': 'The owner’s authority has ended. Ask the owner for a new one, or reach the owner by telephone.',
    'authority-under-ceiling':
      'The owner’s authority does not reach up to the ceiling. Ask the owner for more, or agree on a lower ceiling.',
  } satisfies Record<AuthorityRefusal, string>,
  giving: {
    'sound-mind-not-asked': 'Ask whether this is an adult who can decide, and answer it here.',
    'not-of-sound-mind':
      'Somebody who cannot decide cannot agree. Ask for a joint owner, a legal guardian, or somebody the owner authorised before.',
    'phone-without-witness': 'By telephone another of the staff listens: name who.',
    'witness-explained': 'The witness is somebody else than the one who explained: name another of the staff.',
    'not-signed': 'Sign in the box, or type the full name and name who saw it.',
    'typed-without-witness': 'A typed name needs another of the staff who saw it typed: name who.',
  } satisfies Record<GivingRefusal, string>,
} as const
