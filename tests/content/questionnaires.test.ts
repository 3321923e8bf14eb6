import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { languages } from '#content/languages/index.ts'
import { questionRules } from '#content/questionnaires/question-rules.ts'
import { questionsApp } from '#content/wording/app-questions.ts'
import { questionsInEnglish } from '#content/wording/questions.ts'
import { readingLevel } from '#core/agreement/reading-level.ts'
import { speciesList } from '#core/animal/species.ts'
import type { QuestionWords } from '#core/questionnaire/put-together.ts'
import { cannotTell, type Questionnaire, reportIds } from '#core/questionnaire/questionnaire.ts'

const all: readonly Questionnaire[] = questionRules.all
const { occasions } = questionRules
const nameOf = ({ id, edition }: Pick<Questionnaire, 'id' | 'edition'>) => `${id} ${edition}`
const wordsOf = (language: keyof typeof languages) => languages[language].questions as QuestionWords

/** An edition with its sentences in every language: what was given out. */
function printOf(questionnaire: Questionnaire): string {
  const asked = questionnaire.questions.map(({ id }) =>
    Object.keys(languages).map((language) => wordsOf(language as keyof typeof languages)[id]),
  )
  return createHash('sha256')
    .update(JSON.stringify([questionnaire.questions, asked]))
    .digest('hex')
    .slice(0, 16)
}

describe('the questions to owners', () => {
  it('stay as they were given out: another question or sentence is another edition', () => {
    expect(Object.fromEntries(all.map((one) => [nameOf(one), printOf(one)]))).toEqual({
      'early-home 1': '50dacea4875297f9',
      'months 1': 'd3116d3a13ee8705',
      'twelve-months 1': '81198be2ca17c805',
    })
  })

  it('can always be answered with “I cannot tell”, last of all, unless they are answered in own words', () => {
    const questions = all.flatMap((one) => [...one.questions])
    expect(questions.filter(({ choices }) => choices.length > 0 && choices.at(-1) !== cannotTell)).toEqual([])
    // An answer that is not known is no report, and asks for nothing.
    expect(
      questions.filter(({ reports, asksForCall }) => reports[cannotTell] || asksForCall.includes(cannotTell)),
    ).toEqual([])
    expect(
      questions.filter(({ choices, reports }) => Object.keys(reports).some((one) => !choices.includes(one))),
    ).toEqual([])
  })

  it('have their sentence, a reason, and a word for each answer in every language, and no words for anything else', () => {
    const ids = new Set(all.flatMap(({ questions }) => questions.map(({ id }) => id)))
    for (const language of Object.keys(languages) as (keyof typeof languages)[]) {
      const words = wordsOf(language)
      expect(Object.keys(words).sort(), language).toEqual([...ids].sort())
      for (const { id, choices } of all.flatMap(({ questions }) => questions)) {
        const said = words[id]
        expect([said?.ask.endsWith('?') || said?.ask.endsWith('.'), (said?.why.length ?? 0) > 20], id).toEqual([
          true,
          true,
        ])
        expect(Object.keys(said?.choices ?? {}), id).toEqual([...choices])
      }
    }
  })

  it('name the side in words where they are asked about one ear, and only there', () => {
    for (const { id, about } of all.flatMap(({ questions }) => questions)) {
      for (const language of Object.keys(languages) as (keyof typeof languages)[]) {
        expect([id, wordsOf(language)[id]?.ask.includes('{side}')]).toEqual([id, about === 'ear'])
      }
    }
  })

  it('say of every question what its answer cannot settle', () => {
    expect(Object.keys(questionsApp.cannot).sort()).toEqual(Object.keys(questionsInEnglish).sort())
  })

  it('are easy to read by the formulas of the language, each questionnaire as a whole', () => {
    for (const language of ['en', 'es'] as const) {
      for (const one of all) {
        const text = one.questions
          .flatMap(({ id, choices }) => {
            const said = wordsOf(language)[id]
            return [said?.ask, said?.why, ...choices.map((choice) => said?.choices[choice])]
          })
          .join('\n')
          .replaceAll('{name}', 'Tansy')
          .replaceAll('{side}', language === 'en' ? 'LEFT' : 'IZQUIERDO')
        const level = readingLevel(text, language)
        expect([language, nameOf(one), level.meetsAim, level.measures.map(({ value }) => value.toFixed(1))]).toEqual([
          language,
          nameOf(one),
          true,
          expect.anything(),
        ])
      }
    }
  })

  it('are the house’s own, and say that no instrument was copied and none validated', () => {
    for (const one of all) {
      expect([one.known, one.confidence]).toEqual(['house', 'low'])
      expect(one.where).toMatch(/no published instrument was copied.*not validated/)
    }
  })

  it('are asked at times that name an edition that is there, and fit dogs and cats', () => {
    const known = new Set(all.map(nameOf))
    expect(occasions.filter((one) => !known.has(nameOf({ ...one, id: one.questionnaire })))).toEqual([])
    for (const one of all) {
      for (const species of speciesList) {
        expect(one.questions.filter((question) => question.species.includes(species)).length).toBeGreaterThan(8)
      }
    }
  })

  it('have a rule for every report; an urgent one is phoned about the same day', () => {
    for (const report of reportIds) {
      const { call, look, phoneNow } = questionRules.reports[report]
      expect([report, call.known]).toEqual([report, 'house'])
      if (phoneNow) expect([report, call.value, look !== null]).toEqual([report, { count: 12, unit: 'hours' }, true])
    }
  })
})
