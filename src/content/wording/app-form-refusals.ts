import type { FormRefusalCode } from '#core/forms/refusal.ts'

/** What would be right, said beside the field that cannot be read. */
export const formRefusals = {
  'not-chosen': 'Choose one of the answers.',
  'nothing-chosen': 'Choose at least one.',
  'not-added': 'Add one, or say that there is none.',
  'not-written': 'This needs an answer.',
  'too-long': '{length} characters are too many. Use {most} at most.',
  'not-a-whole-number': '“{given}” is not a whole number. Type digits only, for example 3.',
  'out-of-range': '{given} is outside. Type a whole number from {least} to {most}.',
  'not-a-decimal': '“{given}” is not one plain number. Type it with “{mark}” for decimals, for example 0{mark}5.',
  'not-money': '“{given}” is not an amount. Type digits, with “{mark}” for decimals and no mark for thousands.',
  'no-currency': 'Type the currency with the amount, for example {given} GBP.',
  'not-a-moment':
    '“{given}” is not a date known here. Type 2019, or March 2024, or 5 March 2024, or 5 March 2024, 14:20.',
  'not-a-day': '“{given}” is not one day. Type it with the month as a word, for example 5 March 2026.',
  'day-or-month-first': '“{given}” can be two days. Type the month as a word: {readings}.',
  'no-such-local-time': 'The clocks skipped {given}. Type the time as the clock showed it.',
  'local-time-twice': 'The clocks showed {given} twice. Type which one is meant: {readings}.',
  'not-a-time': '“{given}” is not a time of day. Type it like 08:00 or 20:30.',
  'too-few': 'Add at least {least}.',
  'row-unanswered': 'Answer this one too.',
  'unit-open': 'Choose first what is measured; the unit follows from it.',
  'not-drawn': 'Draw on the plate first.',
  'step-too-early':
    'This step begins on {given}, and the one before it on {day}. Type a day after {day}, or take the step out.',
  'step-too-late':
    'This step begins on {given}, after the last day of the medicine, {day}. Type a day up to {day}, or write more days for the medicine.',
  'does-not-fit': '“{given}” does not fit here. Answer it again.',
  'other-ear':
    'This operation was on the {side} ear. Choose {side} above, or the operation of the ear that is chosen there.',
  'before-operation':
    '{given} lies before the operation of {day}. Give a day on or after it, or choose the operation that it followed.',
  'quantity-empty': 'Type a number with its unit: {wanted}.',
  'quantity-strange-character':
    '“{given}” holds a character that is not a plain digit, letter or mark. Type it by hand.',
  'quantity-negative': '“{given}” is below zero. Type the amount without a minus sign.',
  'quantity-bound': '“{given}” is a limit or an estimate, not one amount. Type the measured number.',
  'quantity-range': '“{given}” is a range. Type the one number that is meant; none is chosen from a range.',
  'quantity-two-numbers': '“{given}” holds more than one number. Type one number and one unit.',
  'quantity-no-number': '“{given}” does not begin with a number. Type the number first, then {wanted}.',
  'quantity-no-unit': '“{given}” has no unit. Type it too: {wanted}.',
  'quantity-unknown-unit': '“{unit}” is not a unit known here. Use {wanted}.',
  'quantity-per-pound':
    '“{given}” is per pound. Per kilogram the number is 2.2046 times as large: work it out, then {wanted}.',
  'quantity-wrong-unit': '“{given}” cannot stand here. Give it in {wanted}.',
  'quantity-thousands-or-decimal':
    '“{given}” can be read as thousands or as a decimal. Type it without a mark for thousands.',
  'quantity-comma-without-locale': '“{given}” is written with a comma. Type it with a point.',
  'quantity-other-decimal-mark': '“{given}” uses the other decimal mark than this place. Type it with the usual one.',
  'quantity-missing-first-digit': '“{given}” has no digit before the decimal mark. Type the zero.',
  'quantity-missing-last-digit': '“{given}” ends in a decimal mark. Type the missing digit or leave the mark out.',
  'quantity-padded-with-zeros':
    '“{given}” begins with a zero that may hide a lost mark. Type the number that is meant.',
} as const satisfies Record<FormRefusalCode, string>
