import { Suspense, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { shellInEnglish } from '#content/wording/app-shell.ts'
import { type Side, sides } from '#core/animal/species.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { drawingsOf } from '#core/plate/drawings-of.ts'
import { lazyPart } from '../../ahead.tsx'
import { SideWord } from '../../design/side-word.tsx'
import { Fault } from '../../shell/fault.tsx'
import { entryHref, plateHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import styles from './panels.module.css'

const words = caseInEnglish.plates
const EarPlate = lazyPart(async () => ({ default: (await import('../../plate/ear-plate.tsx')).EarPlate }))

/** The plate of each ear with what is on record; open for an ear that is to be operated. */
export function Plates() {
  const { file, operations } = useCaseView()
  const { theCase } = file
  const planned = (side: Side) =>
    operations.some((operation) => operation.side === side) ||
    (theCase.latest('agreement')?.body.plan.ears ?? []).some((ear) => ear.side === side)
  return (
    <div className={styles.panel}>
      {sides.map((side) => (
        <OnePlate key={side} side={side} wanted={planned(side)} />
      ))}
    </div>
  )
}

function OnePlate({ side, wanted }: { readonly side: Side; readonly wanted: boolean }) {
  const { file, id } = useCaseView()
  const [, navigate] = useLocation()
  const [open, setOpen] = useState(wanted)
  const kept = drawingsOf(file.theCase, side).length
  return (
    <details className={styles.opener} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span>
          {words.title} <SideWord side={side} />
        </span>
      </summary>
      {open && (
        <Fault>
          <Suspense fallback={<p role="status">{shellInEnglish.loading}</p>}>
            <EarPlate theCase={file.theCase} side={side} onEntry={(entry) => navigate(entryHref(id, entry))} />
          </Suspense>
        </Fault>
      )}
      <p data-screen-only>
        <Link href={plateHref(id, side)}>{fill(words.draw, { side })}</Link>
        {kept > 0 && <span className="soft"> {sayCount(words.kept, kept)}</span>}
      </p>
    </details>
  )
}
