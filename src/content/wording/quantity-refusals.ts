import type { TypedRefusalCode } from '#core/units/read-typed.ts'

/** Why typed text is asked for again, and what to type instead. */
export const quantityRefusals = {
  empty: 'Nothing was typed. Type a number and its unit, for example 12.5 kg.',
  'strange-character':
    '"{given}" contains a character that is not a plain digit, letter or mark. Type it by hand, for example 12.5 kg.',
  negative: '"{given}" is below zero. Type the amount without a minus sign.',
  bound: '"{given}" is a limit or an estimate, not one amount. Type the measured number.',
  range: '"{given}" is a range. Type the one number that is meant; none is chosen from a range.',
  'two-numbers': '"{given}" holds more than one number. Type one number and one unit.',
  'no-number': '"{given}" does not begin with a number. Type the number first, for example 12.5 kg.',
  'no-unit': '"{given}" has no unit. Type it with its unit, for example {number} kg or {number} lb.',
  'unknown-unit': '"{unit}" in "{given}" is not a unit known here. Did you mean {suggestion}? Type it so.',
  'per-pound':
    '"{given}" is per pound, and doses here are per kilogram: the number per kilogram is 2.2046 times as large. Work it out and type it with its unit.',
  'wrong-unit': '"{given}" cannot stand here. Give it in {wanted}.',
  'thousands-or-decimal':
    '"{given}" can be read as thousands or as a decimal. Type it without a mark for thousands, with the decimals that are meant, for example 1250 g.',
  'comma-without-locale':
    '"{given}" is written with a comma, and this place has not said that a comma means decimals. Type it with a point.',
  'other-decimal-mark': '"{given}" uses the other decimal mark than this place. Type it with the usual one.',
  'missing-first-digit': '"{given}" has no digit before the decimal mark. Type the zero, for example 0.5 kg.',
  'missing-last-digit': '"{given}" ends in a decimal mark. Type the missing digit or leave the mark out.',
  'padded-with-zeros': '"{given}" begins with a zero that may hide a lost mark. Type 0.5 or 5, whichever is meant.',
} as const satisfies Record<TypedRefusalCode, string>
