import { readingInEnglish } from '#content/wording/app-case.ts'
import { keptInEnglish as words } from '#content/wording/app-kept.ts'
import type { Entry } from '#core/journal/entry.ts'
import { lineOfOne } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { differences } from '#core/reading/compare.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { useCase } from '../../journal/cases.ts'
import { Attachments } from '../case/attachments.tsx'
import { library, rowsOf, useCaseView } from '../case/case-view.ts'
import { EntryBody } from '../case/entry-body.tsx'
import { EntryFigures } from '../case/entry-figures.tsx'
import { Opened } from '../case/with-case.tsx'
import { Differences } from '../case/write/compare.tsx'

type Kept = {
  readonly entry: Entry
  /** The server has other bytes under the same id: what differs is shown. */
  readonly aside: boolean
}

/** An entry of this device in the words of the case page. */
export default function InWords({ entry, aside }: Kept) {
  const reading = useCase(entry.stream)
  if (reading.kind === 'loading') return <p role="status">{words.reading}</p>
  if (reading.kind === 'failed') return <p>{fill(words.notRead, { because: reading.because })}</p>
  return (
    <Opened open={reading.value} id={entry.stream.replace(/^case:/, '')}>
      <Said entry={entry} aside={aside} />
    </Opened>
  )
}

function Said({ entry, aside }: Kept) {
  const { file } = useCaseView()
  // Its own bytes, never those that the server has under this id.
  const line = lineOfOne(entry)
  if (!line.known) return <p>{readingInEnglish.unknown}</p>
  const about = entry.subject.kind === 'operation' ? saySubject(entry.subject, file, library) : ''
  return (
    <>
      {about !== '' && (
        <p>
          <strong>{about}</strong>
        </p>
      )}
      <EntryBody rows={rowsOf(line, file)} />
      <EntryFigures line={line} />
      <Attachments line={line} />
      {aside && <OnTheServer entry={entry} />}
    </>
  )
}

function OnTheServer({ entry }: { readonly entry: Entry }) {
  const { file, nameOfEntry } = useCaseView()
  const theirs = file.theCase.line(entry.id) ?? file.house.line(entry.id)
  if (!theirs?.envelope) return null
  const changed = differences([rowsOf(theirs, file), rowsOf(lineOfOne(entry), file)], nameOfEntry)
  return (
    <section className="stack">
      <h3>{words.differs}</h3>
      {changed.length === 0 ? (
        <p>{words.same}</p>
      ) : (
        <Differences changed={changed} heads={[words.heads.server, words.heads.here]} />
      )}
    </section>
  )
}
