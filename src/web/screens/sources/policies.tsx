import { Link } from 'wouter'
import { routeWords } from '#content/wording/app-form-words.ts'
import { speciesInEnglish, usesInEnglish } from '#content/wording/app-formulary.ts'
import { sourcesInEnglish, policiesPage as words } from '#content/wording/app-sources.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import { whoWrote } from '../../journal/who-wrote.ts'
import { policyName, policyValue } from '../settings/policy-name.ts'
import drugStyles from './drug.module.css'
import { SourcesPage } from './frame.tsx'
import { drugs } from './library.ts'
import styles from './policies.module.css'

const { policies } = sourcesInEnglish.parts

/** What this clinic decided for itself, by whom, when and why, and what stood before. */
export function PoliciesScreen() {
  const reading = useHouse()
  return (
    <SourcesPage title={policies.title} lead={policies.lead} part="policies" isList>
      <p data-screen-only>
        <Link href="/settings">{words.change}</Link>
      </p>
      <ReadingView reading={reading}>{({ file }) => <Policies file={file} />}</ReadingView>
    </SourcesPage>
  )
}

function Policies({ file }: { readonly file: CaseFile }) {
  const { house } = file
  return (
    <>
      <Part title={words.house} none={words.none} lines={house.live('house-policy')} file={file}>
        {(body) => ({ title: policyName(body.policy), said: policyValue(body, file) })}
      </Part>
      <Part title={words.doses} none={words.none} lines={house.live('dose-policy')} file={file}>
        {saidOfDose}
      </Part>
      <Part title={words.plans} none={words.noPlans} lines={house.live('usual-plan')} file={file}>
        {saidOfPlan}
      </Part>
      <Former file={file} />
    </>
  )
}

type Said = { readonly title: string; readonly said: string }

function saidOfDose({ drug, species, use, route, qualifier, dose }: BodyOf<'dose-policy'>): Said {
  const bracket = qualifier ? ` (${qualifier})` : ''
  const way = route ? `, ${routeWords[route]}` : ''
  return {
    title: `${nameOf(drug)}, ${speciesInEnglish[species]}, ${usesInEnglish[use]}${way}${bracket}`,
    said: sayUnit(dose),
  }
}

function saidOfPlan({ plan, species, lines }: BodyOf<'usual-plan'>): Said {
  const said = lines.map(({ drug, dose }) => `${nameOf(drug)} ${sayUnit(dose)}`).join(', ')
  return { title: `${plan} (${speciesInEnglish[species]})`, said }
}

function nameOf(drug: string): string {
  return drugs.find(({ id }) => id === drug)?.name ?? drug
}

function Part<Body extends object>(props: {
  readonly title: string
  readonly none: string
  readonly lines: readonly Line<Body>[]
  readonly file: CaseFile
  readonly children: (body: Body) => Said
}) {
  const { title, none, lines, file, children } = props
  return (
    <section aria-label={title} className={drugStyles.species}>
      <h2>{title}</h2>
      {lines.length === 0 && <p>{none}</p>}
      {lines.map((line) => {
        const { title: name, said } = children(line.body)
        const because = 'because' in line.body ? String(line.body.because) : null
        return (
          <article key={line.header.id} className={styles.policy}>
            <h3>{name}</h3>
            <p className={styles.said}>{said}</p>
            {because && (
              <p>
                {words.because}: {because}
              </p>
            )}
            <p className="soft">{fill(words.since, whoWrote(file, line))}</p>
          </article>
        )
      })}
    </section>
  )
}

/** Nothing is overwritten: what was replaced or taken back stays readable. */
function Former({ file }: { readonly file: CaseFile }) {
  const kinds = ['house-policy', 'dose-policy', 'usual-plan']
  const former = file.house.lines.filter(({ header, state }) => state !== 'live' && kinds.includes(header.kind))
  return (
    <section aria-label={words.former} className={drugStyles.species}>
      <h2>{words.former}</h2>
      {former.length === 0 && <p>{words.noFormer}</p>}
      {former.map((line) => {
        const { title, said } = saidOf(line, file)
        return (
          <article key={line.header.id} className={styles.policy}>
            <h3>{title}</h3>
            <p>
              {said} <strong>{words.states[line.state]}</strong>
            </p>
            <p className="soft">{fill(words.since, whoWrote(file, line))}</p>
          </article>
        )
      })}
    </section>
  )
}

function saidOf(line: Line, file: CaseFile): Said {
  if (!line.known || line.body === null) return { title: line.header.kind, said: '' }
  switch (line.header.kind) {
    case 'dose-policy':
      return saidOfDose(line.body as unknown as BodyOf<'dose-policy'>)
    case 'usual-plan':
      return saidOfPlan(line.body as unknown as BodyOf<'usual-plan'>)
    default: {
      const body = line.body as unknown as BodyOf<'house-policy'>
      return { title: policyName(body.policy), said: policyValue(body, file) }
    }
  }
}
