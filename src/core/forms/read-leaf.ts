import type { Json } from '#core/journal/canonical.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { readMoment as readSpoken } from '#core/time/moment.ts'
import { plain } from '#core/units/quantity.ts'
import { readTyped } from '#core/units/read-typed.ts'
import { readTypedWeight } from '#core/units/show-weight.ts'
import type { Unit } from '#core/units/unit.ts'
import { typedUnit, unitWord } from '#core/units/unit-words.ts'
import type { FormRefusalCode, Place } from './refusal.ts'

export type LeafRefusal = { readonly because: FormRefusalCode; readonly about: Readonly<Record<string, string>> }
export type LeafRead = Outcome<Json, LeafRefusal>

const no = (because: FormRefusalCode, about: Readonly<Record<string, string>> = {}): LeafRead =>
  refuse({ because, about })

export function readText(text: string, most: number): LeafRead {
  const given = text.trim()
  if (given === '') return no('not-written')
  return given.length > most ? no('too-long', { most: String(most), length: String(given.length) }) : answer(given)
}

/** One text per line; empty lines say nothing. */
export function readLines(text: string, most: number): LeafRead {
  const lines = text.split('\n').map((line) => line.trim())
  const tooLong = lines.find((line) => line.length > most)
  if (tooLong !== undefined) return no('too-long', { most: String(most), length: String(tooLong.length) })
  return answer(lines.filter((line) => line !== ''))
}

export function readWholeNumber(text: string, least: number, most: number): LeafRead {
  const given = text.trim()
  if (given === '') return no('not-written')
  if (!/^(0|[1-9]\d{0,14})$/.test(given)) return no('not-a-whole-number', { given })
  const value = Number(given)
  if (value >= least && value <= most) return answer(value)
  return no('out-of-range', { given, least: String(least), most: String(most) })
}

/** A plain decimal as text, with the decimal mark of the place. */
export function readDecimal(text: string, { decimalMark }: Pick<Place, 'decimalMark'>): LeafRead {
  const given = text.trim()
  if (given === '') return no('not-written')
  const mark = decimalMark === '.' ? '\\.' : ','
  if (!new RegExp(`^(0|[1-9]\\d*)(${mark}\\d+)?$`).test(given)) return no('not-a-decimal', { given, mark: decimalMark })
  return answer(given.replace(',', '.'))
}

/** "3400", "3400.00" in the currency of the clinic, or with its own: "3400 EUR". */
export function readMoney(text: string, place: Pick<Place, 'decimalMark' | 'currency'>): LeafRead {
  const given = text.trim()
  if (given === '') return no('not-written')
  const match = /^([\d.,]+)(?: ?([A-Z]{3}))?$/.exec(given)
  const amount = match ? readDecimal(match[1] ?? '', place) : undefined
  if (amount?.kind !== 'answer') return no('not-money', { given, mark: place.decimalMark })
  const currency = match?.[2] ?? place.currency
  return currency === null ? no('no-currency', { given }) : answer({ amount: amount.answer, currency })
}

export function readTimeOfDay(text: string): LeafRead {
  const given = text.trim()
  if (given === '') return no('not-written')
  const match = /^([01]?\d|2[0-3])[:.]([0-5]\d)$/.exec(given)
  return match ? answer(`${match[1]?.padStart(2, '0')}:${match[2]}`) : no('not-a-time', { given })
}

/** "08:00, 20:00". */
export function readTimes(text: string): LeafRead {
  const given = text.split(/[,;\s]+/).filter((time) => time !== '' && time !== 'and')
  if (given.length === 0) return no('not-written')
  const times = given.map(readTimeOfDay)
  const wrong = times.find(({ kind }) => kind === 'refusal')
  return wrong ?? answer(times.map((time) => (time.kind === 'answer' ? time.answer : '')))
}

export function readMoment(text: string, zone: string): LeafRead {
  const given = text.trim()
  if (given === '') return no('not-written')
  const moment = readSpoken(given, zone)
  if (!('because' in moment)) return answer(moment)
  switch (moment.because) {
    case 'day-or-month-first':
    case 'local-time-twice':
      return moment.readings.length === 0
        ? no('not-a-moment', { given })
        : no(moment.because, { given, readings: moment.readings.join(' / ') })
    case 'no-such-local-time':
      return no('no-such-local-time', { given })
    default:
      return no('not-a-moment', { given })
  }
}

/** A calendar day of the journal, `2026-03-05`, from "5 March 2026". */
export function readDay(text: string): LeafRead {
  const moment = readMoment(text, 'UTC')
  if (moment.kind === 'refusal') {
    return moment.refusal.because === 'not-a-moment' ? no('not-a-day', { given: text.trim() }) : moment
  }
  const { at, precision } = moment.answer as { at: string; precision: string }
  return precision === 'day' ? answer(at.slice(0, 10)) : no('not-a-day', { given: text.trim() })
}

/**
 * A quantity in one of the units its field takes. Where the field takes one unit only, it stands beside the box and
 * the number alone is enough; with more than one the unit must be typed, it is never guessed.
 */
export function readQuantityText(text: string, units: readonly Unit[], place: Pick<Place, 'decimalMark'>): LeafRead {
  const [only] = units
  const { number, word } = apart(text)
  const unit = word === '' ? (units.length === 1 ? only : undefined) : (typedUnit(word) ?? word)
  const given = text.trim()
  const read = readTyped(number !== '' && unit !== undefined ? `${number} ${unit}` : given, {
    decimalMark: place.decimalMark,
  })
  const wanted = wantedWords(units)
  if (read.kind === 'refusal') return no(`quantity-${read.refusal.because}`, { ...read.refusal.about, given, wanted })
  const { value, unit: readIn } = read.answer
  // The same dimension is not enough: a body keeps the unit it was given in, and takes only these.
  if (!units.includes(readIn)) return no('quantity-wrong-unit', { given, unit: unitWord(readIn), wanted })
  return answer({ value: plain(value), unit: readIn })
}

function apart(text: string): { number: string; word: string } {
  const match = /^\s*([\d.,]+)\s*(.*?)\s*$/su.exec(text)
  return { number: match?.[1] ?? '', word: match?.[2] ?? '' }
}

function wantedWords(units: readonly Unit[]): string {
  return units.slice(0, 6).map(unitWord).join(', ')
}

/** Kilograms as the body keeps them, and what was typed when it was not kilograms. */
export function readBodyWeight(text: string, place: Pick<Place, 'decimalMark'>): LeafRead {
  const read = readTypedWeight(text, { decimalMark: place.decimalMark })
  const given = text.trim()
  if (read.kind === 'refusal') {
    return no(`quantity-${read.refusal.because}`, { ...read.refusal.about, given, wanted: 'kg, lb' })
  }
  const { kilograms, typed } = read.answer
  return answer({
    weight: { value: plain(kilograms.value), unit: 'kg' },
    typed: typed.unit === 'kg' ? null : { value: plain(typed.value), unit: typed.unit },
  })
}
