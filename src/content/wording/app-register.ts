import type { RegisterCode } from '#core/register/register-findings.ts'

/** The controlled-drug registers, in English. */
export const registerInEnglish = {
  local:
    'This page helps to keep a register. Which drugs belong in one, who may witness, how long it is kept and whether this form satisfies the law where you work is yours to confirm.',
  rules: 'What a published guidance asks for, as an orientation',
  toShelf: 'Mark a product on the shelf',
  none: 'No product on the shelf is marked to be kept in a register.',
  noStrength: 'Marked, but without a strength on the shelf, so no register can be kept: {labels}.',
  name: '{drug} {strength}, {form}',
  noSuch: 'There is no such register.',
  open: { one: '1 thing to settle', many: '{count} things to settle' },
  nothingOpen: 'Drawn is given and wasted; the counts agree.',
  balance: 'Balance: {balance}',
  sum: 'Opening {opening} + received {received} + more than written {found} − drawn {drawn} − destroyed, broken, sent back or missing {gone} = {balance}',
  add: 'Write a line',
  addTitle: 'A line of this register',
  amend: 'Amend',
  amendTitle: 'Amend a line',
  amendHelp: 'The line that stood stays readable, with who wrote it.',
  both: 'Both lines are the same draw: this one replaces both.',
  reason: 'Why it is amended',
  print: 'Print',
  empty: 'Nothing is written yet. Begin with what stands in the cabinet, counted with a witness.',
  toKnow: 'To know',
  ofLine: 'Line {number}, {what}:',
  ofAnimal: '{animal}, {when}:',
  printed: '{clinic}. Printed {when}, as read {asOf}.',
  sheet: '{clinic} · {register} · printed {when}',
  lines: 'Lines',
  head: { when: 'When', what: 'What', amount: 'How much', balance: 'Balance', who: 'Who' },
  ampoule: 'ampoule {ampoule}',
  given: 'given {amount}, {who}',
  wasted: 'wasted {amount}, {who}; witness: {witness}',
  witness: 'witness: {witness}',
  nobody: 'nobody available',
  unsaid: '–',
  unsent: 'still on this device',
  unsure: 'order uncertain',
  replaced: 'Replaced by {who}, {when}: {reason}',
  takenBack: 'Taken back by {who}, {when}: {reason}',
  replacing: 'Amended: {reason}',
  owed: {
    what: {
      open: 'Open the register of {register}',
      settle: 'Settle the register of {register}',
      'second-name': 'A second name in the register of {register}',
      count: 'Count {register}',
    },
    lastCounted: 'Counted last on {when}. Count with a second person and write the line, also when it agrees.',
    more: { one: 'And 1 more thing.', many: 'And {count} more things.' },
  },
  said: {
    'not-marked': 'No product on the shelf is marked for this register any more. Its lines stay.',
    'no-opening': 'No opening stock is written. Count what stands in the cabinet with a witness, and write it.',
    'other-unit': 'A line is not in {unit} and was not added. Amend it.',
    'below-nothing':
      'The balance falls to {balance}. A line is missing or wrong: look for what was received, or amend.',
    'count-differs':
      'Counted {counted}, written {balance}: {left} apart. Count again with a second person and look for a line that was forgotten; then write it, or write what is missing or too much, with why.',
    'ampoule-missing':
      'A draw has no ampoule number, so what became of it cannot be followed. Amend it with the number.',
    'ampoule-elsewhere': 'Ampoule {ampoule} was drawn in another strength too. Amend the line with the wrong number.',
    'draw-differs':
      'Ampoule {ampoule}: drawn {drawn}, given {given}, wasted {wasted}; {left} apart. Write in the case what was given or wasted with this number, or amend the line that is wrong.',
    'draw-not-added':
      'Ampoule {ampoule}: {amounts} cannot be compared with what was drawn. Amend that entry with an amount in millilitres, tablets or the unit of the label.',
    'given-without-ampoule':
      '{amount} was given without an ampoule number. Amend the dose in the case with its number, and write the draw.',
    'given-not-drawn':
      '{amount} was given from ampoule {ampoule}, and no register drew it. Write the draw, or amend the number.',
    'wasted-not-drawn':
      '{amount} was wasted of ampoule {ampoule}, and no register drew it. Write the draw, or amend the number.',
    'witness-missing':
      'A line has no witness: nobody available. Somebody other than who wrote it looks at it, and amends it with what was seen.',
    'said-twice':
      'Two lines stand side by side (ampoule {ampoule}), as when two devices drew without a network. A draw moves the balance only when it is settled: if they are one draw, amend one to replace both; if two, give one its own number.',
    'wasted-twice': 'What was wasted of ampoule {ampoule} is written twice. Settle it in the case.',
    'order-uncertain': 'Nobody had measured the clock of the device that wrote a line: the order is uncertain.',
  } satisfies Record<RegisterCode, string>,
} as const
