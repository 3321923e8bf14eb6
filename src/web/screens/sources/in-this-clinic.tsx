import { Link } from 'wouter'
import { speciesInEnglish, usesInEnglish } from '#content/wording/app-formulary.ts'
import { drugPage } from '#content/wording/app-sources.ts'
import type { Drug } from '#core/formulary/drug.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import drugStyles from './drug.module.css'

const words = drugPage.house

/** Where this clinic uses the drug: its shelf, its usual plans, its dose policies. */
export function InThisClinic({ drug }: { readonly drug: Drug }) {
  const reading = useHouse()
  return (
    <section aria-labelledby="house" className={drugStyles.species}>
      <h2 id="house">{words.title}</h2>
      <ReadingView reading={reading}>
        {({ file }) => {
          const uses = usesIn(file.house, drug.id)
          return uses.length === 0 ? (
            <p>{words.none}</p>
          ) : (
            <ul className={drugStyles.uses}>
              {uses.map(({ href, said }) => (
                <li key={said}>
                  <Link href={href}>{said}</Link>
                </li>
              ))}
            </ul>
          )
        }}
      </ReadingView>
    </section>
  )
}

function usesIn(house: Case, drug: string): { href: string; said: string }[] {
  const shelf = house.live('shelf-item').filter(({ body }) => body.drug === drug)
  const lines = house
    .live('usual-plan')
    .flatMap(({ body: { plan, lines: all } }) =>
      all.filter((line) => line.drug === drug).map((line) => ({ plan, line })),
    )
  const policies = house.live('dose-policy').filter(({ body }) => body.drug === drug)
  return [
    ...shelf.map(({ body }) => ({ href: '/settings/shelf', said: fill(words.shelf, { label: body.label }) })),
    ...lines.map(({ plan, line: { dose, use, because } }) => ({
      href: `/settings/plans/of/${encodeURIComponent(plan)}`,
      said: fill(words.plan, { plan, dose: sayUnit(dose), use: usesInEnglish[use], because }),
    })),
    ...policies.map(({ body: { species, use, dose, because } }) => ({
      href: '/settings/doses',
      said: fill(words.policy, {
        animal: speciesInEnglish[species].toLowerCase(),
        use: usesInEnglish[use],
        dose: sayUnit(dose),
        because,
      }),
    })),
  ]
}
