import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { imaging } from '#core/journal/kinds/imaging.ts'
import { demoClinic } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { House } from './house-for-tests.ts'

const scans = 14
const sentence = 'Left canal mineralised and closed; left bulla filled with soft tissue, wall thick. '

/**
 * The invented practice on a real server, where the spaniel has had so many scans with long reports that her letter to
 * the referring vet has more than twenty pages; and how a paper is fetched.
 */
export async function practiceWithLongLetter() {
  const house = await House.closed()
  const office = house.browser('office')
  const person = { name: 'Sven Surgeon', role: 'surgeon', letters: null }
  const choice = 'invented-practice'
  const opened = await office.act('open-clinic', { ...house.opening(), choice, clinic: null, person })
  const first = tansy().entries.find(({ kind }) => kind === 'imaging')
  if (!first) throw new Error('The spaniel was scanned.')
  const { stream, subject, happenedAt } = first
  const author = { kind: 'person', person: opened.body.active } as const
  const make = entryMaker({ clinic: demoClinic, stream, subject, author }, 3)
  const body = { ...imaging.example, text: sentence.repeat(85).trim() }
  const entries = Array.from({ length: scans }, () => make({ kind: 'imaging', at: happenedAt.at, body }))
  const { status, body: answer } = await office.send(entries, demoClinic)
  if (status !== 200) throw new Error(JSON.stringify(answer))
  const get = (file: string) =>
    fetch(`${house.serving.url}/api/papers/${stream}/${file}`, { headers: { cookie: office.cookie ?? '' } })
  return { house, office, get, letter: 'referring-letter.pdf' }
}
