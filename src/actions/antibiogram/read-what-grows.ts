import { z } from 'zod'
import { antibiogramRules } from '#content/susceptibility/antibiogram-rules.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { antibiogramOf } from '#core/antibiogram/antibiogram.ts'
import { grownInJournal, grownKinds } from '#core/antibiogram/grown-in-journal.ts'
import { factsOfHouse } from '#core/culture/house-facts.ts'
import { recogniseAgent, recogniseOrganism } from '#core/culture/recognise.ts'
import { currentRows } from '#core/journal/case-file.ts'
import { type Case, fold } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'
import type { Store } from '../store.ts'
import { answerOf, antibiogramAnswer } from './antibiogram-answer.ts'
import { antibiogramRequest, methodAsked } from './antibiogram-request.ts'
import { notesOf } from './notes.ts'
import { readerBy } from './read-grown.ts'

const count = z.int().min(0)

/** What grows here: the clinic's own isolates, counted from the record as it now stands. */
export const readWhatGrows = defineAction({
  name: 'read-what-grows',
  summary: 'What grows here: first isolates of our own record, and of each drug how many are susceptible.',
  input: antibiogramRequest,
  output: antibiogramAnswer.extend({
    /** The day the table was made on, where the clinic is. */
    today: z.string(),
    /** Isolates on record, and those that do not count. */
    isolates: count,
    preliminary: count,
    withoutSpecies: count,
  }),
  may: 'signed-in',
  run: async (input, world) => {
    const { clinic } = callerIn(world)
    const { store, clock } = world
    const registers = currentRows((await store.registers(clinic)) as readonly Row[])
    const zone = registers.clinic.values().next().value?.zone ?? 'UTC'
    const facts = factsOfHouse({ house: await houseOf(store, clinic), people: registers.people }, susceptibility)
    const { method, edition } = methodAsked(input, facts)
    const recorded = grownInJournal(await store.ofKinds(clinic, grownKinds), { zone, organismOf })
    const isolates = recorded.isolates.map((isolate) => ({ ...isolate, tested: isolate.tested.map(withAgent) }))
    const table = antibiogramOf(isolates, readerBy(edition.id, facts), {
      method,
      points: antibiogramRules.points.value,
    })
    const answer = answerOf(table, method, edition)
    const { preliminary, withoutSpecies } = recorded
    const about = { method, places: [], withoutPurpose: 0, columns: [] }
    return {
      ...answer,
      notes: notesOf(answer, about),
      today: dayOf({ at: clock.now(), zone }),
      isolates: isolates.length,
      preliminary,
      withoutSpecies,
    }
  },
})

/** What the clinic's own stream says of editions: its copies, and the one it chose. */
async function houseOf(store: Store, clinic: string): Promise<Case> {
  const entries = await store.ofKinds(clinic, ['breakpoint-edition', 'house-policy', 'withdrawal'])
  return fold(entries.filter(({ header }) => header.stream === 'clinic'))
}

/** What it was taken for when it was filed, or what its name is known as by now. */
function organismOf({ species, organism }: StoredIsolate): string {
  return species ?? recogniseOrganism(organism, susceptibility.organisms).id ?? organism
}

function withAgent(tested: StoredIsolate['results'][number]): StoredIsolate['results'][number] {
  return tested.agent === null ? { ...tested, agent: recogniseAgent(tested.drug, susceptibility.agents).id } : tested
}
