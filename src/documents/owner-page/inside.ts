import { plateFacts } from '#content/plate/plate-facts.ts'
import { sides } from '#core/animal/species.ts'
import { affectedEars } from '#core/chapters/ears.ts'
import { fill } from '#core/outcome/finding.ts'
import { drawPlate } from '#core/plate/draw-plate.ts'
import { drawingsOf, sayDrawing } from '#core/plate/drawings-of.ts'
import { earSentences } from '../leaflet/ears.ts'
import { Html, html } from '../render/markup.ts'
import { hrefOf } from './asked.ts'
import type { OwnerPageInput } from './input.ts'
import { earShown, lines, type Part } from './parts.ts'
import { type Picture, pictureOf, plateStep, plateSteps } from './plate-steps.ts'

/** What was found in both ears, and what the surgeon drew in front of the owner. */
export function foundPart(input: OwnerPageInput): Part {
  const { file, words } = input
  const { page } = words
  const looked = file.theCase.live('ear-findings').length > 0
  const drawn = sides.flatMap((side) =>
    drawingsOf(file.theCase, side).filter(({ line }) => line.body.drawnFor === 'owner'),
  )
  const nameOf = (id: string) => file.people.get(id)?.name ?? file.contacts.get(id)?.name ?? ''
  const pictures = drawn.map((drawing) => {
    const { parameters, strokes, marks } = drawing.line.body
    const hand = { strokes, marks }
    const { caption, doubts } = sayDrawing(drawing, words.drawing, nameOf)
    const picture = pictureOf(drawPlate(parameters, plateFacts, words.plate), words, hand)
    return html`${pictureHtml(picture, caption, page.pictureInWords)}${lines(doubts)}`
  })
  return {
    id: 'found',
    title: page.found,
    body: [
      ...lines(looked ? earSentences(file, words) : [page.notReached.findings]),
      ...(drawn.length > 0 ? [html`<h3>${page.drawings}</h3>\n`, ...pictures] : []),
    ],
  }
}

/** The still pictures, turned by plain links; or all of them, for paper. */
export function stepsPart(input: OwnerPageInput): Part {
  const { file, asked, words } = input
  const { page, plate } = words
  const side = earShown(input)
  const about = { id: 'steps', title: page.steps }
  if (!side) return { ...about, body: lines([page.notReached.ear]) }
  const others = affectedEars(file.theCase).filter((ear) => ear !== side)
  const count = plateSteps.length
  const at = asked.step === 'all' ? null : Math.min(asked.step, count)
  const shown = plateSteps.flatMap((step, index) =>
    at === null || index === at - 1 ? [{ step, number: index + 1 }] : [],
  )
  const link = (step: number | 'all', text: string) => html`<a href="${hrefOf(asked, { step }, 'steps')}">${text}</a>`
  const titleOf = (number: number) => words.steps[plateSteps[number - 1]?.id ?? 'inside'].title
  return {
    ...about,
    body: [
      ...lines([fill(page.stepsIntro, { side: plate.sides[side] }), page.stepsIf]),
      ...others.map((ear) => {
        const text = fill(page.stepsEars, { side: plate.sides[ear] })
        return html`<p class="screen"><a href="${hrefOf(asked, { ear }, 'steps')}">${text}</a></p>\n`
      }),
      ...shown.map(({ step, number }) => {
        const { title, text } = words.steps[step.id]
        const picture = plateStep(file.theCase, side, step, words)
        return html`<h3>${fill(page.stepOf, { number: String(number), count: String(count), title })}</h3>
<p>${text}</p>
${picture ? pictureHtml(picture, null, page.pictureInWords) : html`<p>${page.stepNoPicture}</p>`}`
      }),
      html`<p class="turn screen">${at !== null && at > 1 ? link(at - 1, fill(page.stepBack, { title: titleOf(at - 1) })) : html``}
${at !== null && at < count ? link(at + 1, fill(page.stepNext, { title: titleOf(at + 1) })) : html``}
${at === null ? link(1, page.stepOne) : link('all', page.stepAll)}</p>
`,
    ],
  }
}

/** Both layouts of one drawing, of which the page shows one; and the same in words, folded in. */
function pictureHtml({ narrow, wide, alt }: Picture, caption: string | null, inWords: string): Html {
  return html`<figure>
<div class="narrow">${new Html(narrow)}</div>
<div class="wide">${new Html(wide)}</div>
${caption === null ? html`` : html`<figcaption>${caption}</figcaption>`}
<details><summary>${inWords}</summary><p>${alt}</p></details>
</figure>
`
}
