import { z } from 'zod'
import { watching } from '#content/evidence/watching.ts'
import { yearlyMethod } from '#content/evidence/yearly-method.ts'
import { yearlyRefusals } from '#content/wording/yearly-refusals.ts'
import { currentRows } from '#core/journal/case-file.ts'
import { fold } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { reportFrozen } from '#core/journal/kinds/report-frozen.ts'
import { fill } from '#core/outcome/finding.ts'
import { freezeYear } from '#core/yearly/freeze-year.ts'
import { frozenText } from '#core/yearly/frozen-year.ts'
import { reportOf, reportText } from '#core/yearly/report-of.ts'
import { defineAction, type World } from '../action.ts'
import { callerIn } from '../caller.ts'
import { operatedHere } from '../evidence/read-own-figures.ts'
import { watchedQuestions } from '../evidence/watched.ts'
import { Refused } from '../refused.ts'
import { frozenReports } from './frozen-reports.ts'

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
  input: z.strictObject({ year: z.int().min(2000).max(2099) }),
  output,
  may: ['surgeon', 'manager'],
  run: async ({ year }, world) => {
    const { clinic, caller } = callerIn(world)
    const { store, secrets, version } = world
    const { name, by, frozen: isFrozen } = await aboutHouse(year, clinic, caller.person, world)
    if (isFrozen) throw refused('already-frozen', year)
    const { readUntil, ears, today, rules } = await readAtOnce(clinic, world)
    const salt = Array.from(secrets.bytes(32), (byte) => byte.toString(16).padStart(2, '0')).join('')
    const about = { year, lookedAt: today, method: yearlyMethod, rules, watching, watched: watchedQuestions, salt }
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
        lookedAt: today,
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

/** What is known, and the position of the journal up to which that was read: nothing came in between. */
async function readAtOnce(clinic: string, world: World) {
  for (let time = 0; time < tries; time += 1) {
    const remaking = await world.store.remaking(clinic)
    if (remaking) {
      const about = { made: String(remaking.made), of: String(remaking.of) }
      throw new Refused(409, 'lists-behind', fill(yearlyRefusals['lists-behind'], about))
    }
    const readUntil = await world.store.position(clinic)
    const known = await operatedHere(clinic, world)
    if ((await world.store.position(clinic)) === readUntil) return { readUntil, ...known }
  }
  throw new Refused(409, 'still-writing', yearlyRefusals['still-writing'])
}

function refused(because: 'already-frozen' | 'year-not-over' | 'nothing-operated', year: number): Refused {
  const sentence = fill(yearlyRefusals[because], { year: String(year), next: String(year + 1) })
  return new Refused(409, because, sentence, { path: 'year' })
}
