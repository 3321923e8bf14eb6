import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import type { Mapping } from './around.ts'
import { answers, codedAnswer, textAnswer } from './questionnaire.ts'
import { sideOf } from './side.ts'

const ask = say.questions

/** What is done against the skin disease, measure by measure with who does it. */
export const skinPlan: Mapping<'skin-plan'> = (line, around) => {
  const { disease, measures, text, reviewOn } = line.body
  return [
    answers(line, around, { name: 'skin-plan' }, [
      codedAnswer('disease', ask.disease, disease),
      ...measures.map(({ what, by }, place) => ({
        ...textAnswer(`measure.${place + 1}`, ask.measure, what),
        item: [codedAnswer(`measure.${place + 1}.by`, ask.by, by)],
      })),
      ...(text === null ? [] : [textAnswer('text', ask.words, text)]),
      ...(reviewOn === null ? [] : [textAnswer('review', ask.review, reviewOn)]),
    ]),
  ]
}

/** What becomes of the ear that is not operated; the side is the first thing it says. */
export const otherEarPlan: Mapping<'other-ear-plan'> = (line, around) => {
  const { plan, because, reviewOn } = line.body
  const side = sideOf(line)
  return [
    answers(line, around, { name: 'other-ear-plan' }, [
      ...(side === undefined ? [] : [codedAnswer('side', say.sides[side], side)]),
      { ...codedAnswer('plan', ask.plan, plan), item: [textAnswer('plan.because', ask.because, because)] },
      ...(reviewOn === null ? [] : [textAnswer('review', ask.review, reviewOn)]),
    ]),
  ]
}
