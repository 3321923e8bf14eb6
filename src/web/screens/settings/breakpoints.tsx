import { useState } from 'react'
import { Link } from 'wouter'
import { susceptibility } from '#content/susceptibility/index.ts'
import { breakpointsInEnglish } from '#content/wording/app-breakpoints.ts'
import { breakpointSettings as words } from '#content/wording/app-settings-breakpoints.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { editionById } from '#core/culture/editions.ts'
import { chosenEdition, editionPolicy, factsOfHouse } from '#core/culture/house-facts.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import { whoWrote } from '../../journal/who-wrote.ts'
import { ChooseEdition } from './choose-edition.tsx'
import { SettingsPage } from './frame.tsx'
import { LoadEdition } from './load-edition.tsx'
import { useRefusal } from './may.ts'
import styles from './settings.module.css'
import { TakeBack } from './take-back.tsx'

type Copy = Line<BodyOf<'breakpoint-edition'>>

/** By which edition this clinic reads cultures of animals, and the copies that it loaded itself. */
export function OwnBreakpointsScreen() {
  const reading = useHouse()
  const refusal = useRefusal(mayWrite['breakpoint-edition'])
  return (
    <SettingsPage part="breakpoints">
      {refusal && <p className="soft">{refusal}</p>}
      <p>
        <Link href="/sources/breakpoints">{words.sources}</Link>
      </p>
      <p>
        <strong>{breakpointsInEnglish.warning}</strong>
      </p>
      <ReadingView reading={reading}>
        {({ file }) => (
          <>
            <ReadBy file={file} />
            {refusal === null && <ChooseEdition file={file} />}
            <Copies file={file} refusal={refusal} />
            {refusal === null && <LoadEdition house={file.house} />}
          </>
        )}
      </ReadingView>
    </SettingsPage>
  )
}

function ReadBy({ file }: { readonly file: CaseFile }) {
  const facts = factsOfHouse(file, susceptibility)
  const usual = editionById(facts.editions, facts.usual)
  const policy = file.house.live('house-policy').find(({ body }) => body.policy === editionPolicy)
  const isChosen = chosenEdition(file, facts.editions) !== null
  return (
    <section aria-labelledby="read-by" className={styles.part}>
      <h2 id="read-by">{words.read}</h2>
      <p className={styles.name}>
        {policy && isChosen
          ? fill(words.readOwn, { edition: editionName(usual), because: policy.body.because })
          : fill(words.readOurs, { edition: editionName(usual) })}
      </p>
      {policy && isChosen && <p className="soft">{fill(words.since, whoWrote(file, policy))}</p>}
      {policy && !isChosen && (
        <p>
          <strong>{fill(words.notUsable, { value: policy.body.value })}</strong>
        </p>
      )}
    </section>
  )
}

function Copies({ file, refusal }: { readonly file: CaseFile; readonly refusal: string | null }) {
  const [opened, setOpened] = useState<Copy | null>(null)
  const copies = file.house.live('breakpoint-edition')
  return (
    <section aria-labelledby="copies" className={styles.part}>
      <h2 id="copies">{words.copies}</h2>
      {copies.length === 0 && <p>{words.none}</p>}
      <ul className={`bare ${styles.lines}`}>
        {copies.map((copy) => {
          const { rows, audience, from } = copy.body
          return (
            <li key={copy.header.id} className={styles.line}>
              <div>
                <p className={styles.name}>{editionName(copy.body)}</p>
                <p>
                  {fill(words.about, {
                    rows: sayCount(words.rows, rows.length),
                    audience: breakpointsInEnglish.audiences[audience],
                    from,
                  })}
                </p>
                <p className="soft">{fill(words.since, whoWrote(file, copy))}</p>
              </div>
              <button type="button" disabled={refusal !== null} onClick={() => setOpened(copy)}>
                {words.takeBack}
                <span className="said"> {editionName(copy.body)}</span>
              </button>
            </li>
          )
        })}
      </ul>
      {opened && (
        <TakeBack
          ids={[opened.header.id]}
          title={fill(words.takeBackTitle, { edition: editionName(opened.body) })}
          help={words.takeBackHelp}
          because={words.because}
          verb={words.takeBack}
          onClose={() => setOpened(null)}
        />
      )}
    </section>
  )
}
