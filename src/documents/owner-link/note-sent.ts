import { ownerNoteLimits } from '#content/follow-up/owner-note-limits.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'
import type { Fields } from '../owner-page/asked.ts'
import { keptSinceOf } from './kept-since.ts'

export type NoteBody = BodyOf<'owner-note'>
export const noteRefusals = ['nothing', 'too-long', 'day-wrong', 'day-ahead'] as const
export type NoteRefusal = (typeof noteRefusals)[number]

/** The ears a note can be about. */
export const noteEars = ['LEFT', 'RIGHT', 'not-sure'] as const

/**
 * What an owner sent as a note, read strictly: the text as it was written, a day that exists and is not ahead, one of our
 * ears. A note is its text, its pictures, or both.
 *
 * @example readNote(new URLSearchParams('text=It bleeds'), { pictures: 0, language: 'en', now }) // { text: 'It bleeds', … }
 */
export function readNote(
  form: Fields,
  { pictures, language, now }: { readonly pictures: number; readonly language: string; readonly now: Moment },
): NoteBody | NoteRefusal {
  const text = (form.get('text') ?? '').replaceAll('\r\n', '\n').trim()
  if (text === '' && pictures === 0) return 'nothing'
  if (text.length > ownerNoteLimits.letters.value) return 'too-long'
  const seen = seenOf(form, dayOf(now))
  if (typeof seen === 'string') return seen
  const ear = noteEars.find((one) => one === form.get('ear')) ?? null
  return { language, text: text === '' ? null : text, seen, ear, keptSince: keptSinceOf(form, now) }
}

function seenOf(form: Fields, today: string): NoteBody['seen'] | 'day-wrong' | 'day-ahead' {
  const day = (form.get('seen-day') ?? '').trim()
  const time = (form.get('seen-time') ?? '').trim()
  if (day === '') return time === '' ? null : 'day-wrong'
  const read = new Date(`${day}T00:00:00.000Z`)
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day) || Number.isNaN(read.getTime()) || read.toISOString().slice(0, 10) !== day)
    return 'day-wrong'
  if (time !== '' && !/^([01]\d|2[0-3]):[0-5]\d$/.test(time)) return 'day-wrong'
  return day > today ? 'day-ahead' : { day, time: time === '' ? null : time }
}
