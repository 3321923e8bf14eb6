import { Link } from 'wouter'
import { protocolPage, sourcesInEnglish } from '#content/wording/app-sources.ts'
import { rulesInEnglish } from '#content/wording/app-sources-rules.ts'
import { emergencyTitles } from '#content/wording/emergency.ts'
import drugStyles from './drug.module.css'
import { SourcesPage } from './frame.tsx'
import { emergency, hrefOf, ruleNames } from './library.ts'
import styles from './lists.module.css'

const { protocols } = sourcesInEnglish.parts

/** The emergency rows and the rules. */
export function ProtocolsScreen() {
  return (
    <SourcesPage title={protocols.title} lead={protocols.lead} part="protocols" isList>
      <section aria-labelledby="emergency" className={drugStyles.species}>
        <h2 id="emergency">{protocolPage.emergency}</h2>
        <ul className={`bare ${styles.plain}`}>
          {emergency.map(({ call }) => (
            <li key={call}>
              <Link href={hrefOf('protocols', call)}>{emergencyTitles[call]}</Link>
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="rules" className={drugStyles.species}>
        <h2 id="rules">{protocolPage.rules}</h2>
        <ul className={`bare ${styles.plain}`}>
          {ruleNames.map((name) => (
            <li key={name}>
              <Link href={hrefOf('protocols', name)}>{rulesInEnglish[name].title}</Link>
              <p className="soft">{rulesInEnglish[name].lead}</p>
            </li>
          ))}
        </ul>
      </section>
    </SourcesPage>
  )
}
