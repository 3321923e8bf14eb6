import { z } from 'zod'
import { watching } from '#content/evidence/watching.ts'
import { yearlyMethod } from '#content/evidence/yearly-method.ts'
import { yearlyRefusals } from '#content/wording/yearly-refusals.ts'
import { day } from '#core/journal/answers.ts'
import { currentRows } from '#core/journal/case-file.ts'
import { fold } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { reportFrozen } from '#core/journal/kinds/report-frozen.ts'
import { fill } from '#core/outcome/finding.ts'
import { earsOfYear, freezeYear } from '#core/yearly/freeze-year.ts'
import { frozenText } from '#core/yearly/frozen-year.ts'
import { reportOf, reportText } from '#core/yearly/report-of.ts'
import { defineAction, type World } from '../action.ts'
import { callerIn } from '../caller.ts'
import { operatedHere } from '../evidence/read-own-figures.ts'
import { watchedQuestions } from '../evidence/watched.ts'
import { Refused } from '../refused.ts'
import { frozenReports } from './frozen-reports.ts'
import { earsKnownUntil } from './known-until.ts'

const output = z.object({
  /** The entry that freezes it, but for what was decided for next year. */
  body: reportFrozen.body,
  attachment: z.object({ hash: z.string(), mediaType: z.string(), bytes: z.int(), name: z.string() }),
})
export type PreparedReport = z.infer<typeof output>

export const frozenMediaType = 'application/json'
const tries = 3

/**
 * Takes the data of a year out of the record as it is known now, keeps it as a file under its hash, and gives the entry
 * with which a person freezes it. Without that entry nothing is frozen.
 */
export const prepareReport = defineAction({
  name: 'prepare-report',
  summary:
    'Takes the de-identified data of a year that is over, keeps it under its hash, and gives the entry that freezes it.',
  input: z.strictObject({
    year: z.int().min(2000).max(2099),
    /** What was seen up to this day is in it; without it, today. */
    lookedAt: day.optional(),
  }),
  output,
  may: ['surgeon', 'manager'],
  run: async ({ year, lookedAt: asked }, world) => {
    const { clinic, caller } = callerIn(world)
    const { store, secrets, version } = world
    const { name, by, frozen: isFrozen } = await aboutHouse(year, clinic, caller.person, world)
    if (isFrozen) throw refused('already-frozen', year)
    const { readUntil, ears, lookedAt, rules } = await readAtOnce({ year, asked }, clinic, world)
    const salt = Array.from(secrets.bytes(32), (byte) => byte.toString(16).padStart(2, '0')).join('')
    const about = { year, lookedAt, method: yearlyMethod, rules, watching, watched: watchedQuestions, salt }
    const made = freezeYear(ears, about)
    if (made.kind === 'refusal') {
      if (made.refusal.because === 'salt-too-short') throw new Error('Chance gave too few bytes.')
      throw refused(made.refusal.because, year)
    }
    const { text, hash } = frozenText(made.answer)
    const bytes = new TextEncoder().encode(text)
    await store.putFile(clinic, hash, frozenMediaType, bytes)
    return {
      body: {
        year,
        lookedAt,
        readUntil,
        rows: made.answer.rows.length,
        dataHash: hash,
        reportHash: reportText(reportOf(made.answer, hash)).hash,
        method: yearlyMethod,
        program: version,
        clinic: name,
        by,
        decided: [],
      },
      attachment: { hash, mediaType: frozenMediaType, bytes: bytes.length, name: `results-${year}-data.json` },
    }
  },
})

async function aboutHouse(year: number, clinic: string, person: string, { store }: World) {
  const register = currentRows((await store.registers(clinic)) as readonly Row[])
  const house = fold(await store.stream(clinic, 'clinic'))
  return {
    name: register.clinic.values().next().value?.name ?? clinic,
    by: register.people.get(person)?.name ?? person,
    frozen: frozenReports(house).some(({ line }) => line.body.year === year),
  }
}

type Asked = { readonly year: number; readonly asked: string | undefined }

/** What is known of the year, and the position of the journal up to which that was read: nothing came in between. */
async function readAtOnce({ year, asked }: Asked, clinic: string, world: World) {
  const { store } = world
  for (let time = 0; time < tries; time += 1) {
    const remaking = await store.remaking(clinic)
    if (remaking) {
      const about = { made: String(remaking.made), of: String(remaking.of) }
      throw new Refused(409, 'lists-behind', fill(yearlyRefusals['lists-behind'], about))
    }
    const readUntil = await store.position(clinic)
    const { ears: known, today, rules } = await operatedHere(clinic, world)
    const lookedAt = lookedAtOf({ year, asked }, today)
    const some = earsOfYear(known, year)
    const ears = lookedAt === today ? some : await earsKnownUntil(lookedAt, some, { store, clinic })
    if ((await store.position(clinic)) === readUntil) return { readUntil, ears, lookedAt, rules }
  }
  throw new Refused(409, 'still-writing', yearlyRefusals['still-writing'])
}

/** Today, or the day that was asked for: never one to come, never one before the end of the year. */
function lookedAtOf({ year, asked }: Asked, today: string): string {
  if (today <= `${year}-12-31`) throw refused('year-not-over', year)
  if (asked === undefined) return today
  const path = 'lookedAt'
  const about = { year: String(year), next: String(year + 1), today }
  if (asked > today)
    throw new Refused(409, 'looked-at-in-future', fill(yearlyRefusals['looked-at-in-future'], about), { path })
  if (asked <= `${year}-12-31`)
    throw new Refused(409, 'looked-at-too-early', fill(yearlyRefusals['looked-at-too-early'], about), { path })
  return asked
}

function refused(because: 'already-frozen' | 'year-not-over' | 'nothing-operated', year: number): Refused {
  const sentence = fill(yearlyRefusals[because], { year: String(year), next: String(year + 1) })
  return new Refused(409, because, sentence, { path: 'year' })
}
