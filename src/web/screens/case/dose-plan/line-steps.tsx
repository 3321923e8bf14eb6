import type { DoseLine, DrawnLine } from '#core/dosing/request.ts'
import { lineSteps } from '#documents/case/line-steps.ts'
import styles from './dose-plan.module.css'

/** What is done besides drawing up: loading dose, bag, pump, what is handed out. Nothing where there is nothing of it. */
export function LineSteps({ now, lines }: { readonly now: DrawnLine; readonly lines: readonly Named[] }) {
  const steps = lineSteps(now, lines)
  if (steps.length === 0) return null
  return (
    <ol className={`bare ${styles.steps}`}>
      {steps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
  )
}

type Named = Pick<DoseLine, 'id' | 'drug'>
