import { type FormEvent, useState } from 'react'
import { Link, useLocation, useParams } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { type Side, sides } from '#core/animal/species.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { contactNamed, personNamed } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { emptyHand } from '#core/plate/hand.ts'
import { Choices } from '../../../design/choices.tsx'
import { Modal } from '../../../design/modal.tsx'
import { Page } from '../../../design/page.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { EarPlate } from '../../../plate/ear-plate.tsx'
import { KeptDrawings } from '../../../plate/kept-drawings.tsx'
import type { DrawingToKeep, Hands } from '../../../plate/plate.tsx'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, entryHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { WithCase } from '../with-case.tsx'
import styles from './plate-page.module.css'

const words = caseInEnglish.plate

/** The plate of one ear, to draw on with the owner beside it; what is kept becomes an entry. */
export default function PlateScreen() {
  const { side = '' } = useParams()
  const known = sides.find((one) => one === side)
  return <WithCase>{known ? <PlatePage side={known} /> : <p>{caseInEnglish.sides.none}</p>}</WithCase>
}

function PlatePage({ side }: { readonly side: Side }) {
  const { file, id } = useCaseView()
  const { me } = useWho()
  const [, navigate] = useLocation()
  const { draft, change } = useDraft<Hands>(`${file.stream} plate ${side}`, me.id, () => ({}))
  const [asked, setAsked] = useState<DrawingToKeep | null>(null)
  const [kept, setKept] = useState(false)
  const name = file.theCase.latest('identity')?.body.name ?? caseInEnglish.untitled
  const mayDraw = writersOf('plate-drawing').includes(me.role)
  const nameOf = (one: string) => (file.people.has(one) ? personNamed(file, one) : contactNamed(file, one))
  return (
    <Page title={fill(words.title, { side, name })} whose={<CaseLine />} lead={words.lead} wide>
      <EarPlate
        theCase={file.theCase}
        side={side}
        onEntry={(entry) => navigate(entryHref(id, entry))}
        {...(mayDraw && { hands: draft, onHands: change, onKeep: setAsked })}
      />
      {kept && (
        <p role="status" className={styles.kept}>
          {caseInEnglish.kept.here}
        </p>
      )}
      {asked && (
        <KeepDrawing
          drawing={asked}
          side={side}
          onClose={() => setAsked(null)}
          onKept={() => {
            change({ ...draft, [asked.parameters.view]: emptyHand })
            setAsked(null)
            setKept(true)
          }}
        />
      )}
      <section className="stack" aria-labelledby="kept-drawings">
        <h2 id="kept-drawings">{words.keptDrawings}</h2>
        {file.theCase.live('plate-drawing').length === 0 && <p className="soft">{words.noneKept}</p>}
        <KeptDrawings theCase={file.theCase} side={side} nameOf={nameOf} />
      </section>
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

type For = BodyOf<'plate-drawing'>['drawnFor']

/** Title, for whom and who watched are asked when it is kept, not before somebody may draw. */
function KeepDrawing(props: {
  readonly drawing: DrawingToKeep
  readonly side: Side
  readonly onClose: () => void
  readonly onKept: () => void
}) {
  const { drawing, side, onClose, onKept } = props
  const { file } = useCaseView()
  const { pen } = useWho()
  const [title, setTitle] = useState('')
  const [drawnFor, setDrawnFor] = useState<For | null>(null)
  const [watched, setWatched] = useState<readonly string[]>([])
  const [tried, setTried] = useState(false)
  const contacts = file.theCase.latest('household')?.body.contacts.map(({ contact }) => contact) ?? []
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (drawnFor === null) return
    const { plate, parameters, strokes, marks } = drawing
    await writeEntry(pen, {
      kind: 'plate-drawing',
      stream: file.stream,
      subject: { kind: 'ear', animal: animalIn(file), side },
      body: {
        plate,
        parameters: { ...parameters, layers: [...parameters.layers] },
        strokes: strokes.map((stroke) => ({ ...stroke, points: [...stroke.points] })),
        marks: [...marks],
        title: title.trim() === '' ? null : title.trim(),
        drawnFor,
        watchedBy: [...watched],
      },
    })
    onKept()
  }
  return (
    <Modal title={words.keep} close={words.notYet} onClose={onClose}>
      <form className="stack" onSubmit={(event) => void keep(event)}>
        <Choices
          legend={words.drawing}
          value={drawnFor}
          options={['owner', 'team', 'record'] as const}
          say={(one) => words.drawnFor[one]}
          error={tried && drawnFor === null ? words.drawingMissing : null}
          onChoose={setDrawnFor}
        />
        <TextField label={words.drawingTitle} maxLength={300} autoComplete="off" value={title} onText={setTitle} />
        {contacts.length > 0 && (
          <fieldset>
            <legend className={styles.legend}>{words.watched}</legend>
            {contacts.map((contact) => (
              <label key={contact} className={styles.watcher}>
                <input
                  type="checkbox"
                  checked={watched.includes(contact)}
                  onChange={(event) =>
                    setWatched(event.target.checked ? [...watched, contact] : watched.filter((one) => one !== contact))
                  }
                />
                {contactNamed(file, contact)}
              </label>
            ))}
          </fieldset>
        )}
        <p>
          <button type="submit" data-weight="main">
            {words.keep}
          </button>
        </p>
      </form>
    </Modal>
  )
}
