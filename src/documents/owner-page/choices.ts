import { options as optionFacts } from '#content/options/index.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { affectedEars } from '#core/chapters/ears.ts'
import type { OptionHeading, OptionId, ToldId } from '#core/choice/option.ts'
import { optionNamed, optionsFor, type Told, toldFor } from '#core/choice/told.ts'
import { sessionIds } from '#core/choice/told-ids.ts'
import { optionIds } from '#core/journal/kinds/choice.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Numbered } from '../leaflet/numbered-sources.ts'
import { type Html, html } from '../render/markup.ts'
import { hrefOf } from './asked.ts'
import { dotSquare } from './dots.ts'
import { type Figure, type Figures, figuresFor } from './figures.ts'
import type { OwnerPageInput } from './input.ts'
import { lines, nameOf, type Part } from './parts.ts'

/** What is told about the choice itself, about the animal, about the household, and what nobody knows: four lists, never mixed. */
const groups = [
  { of: 'choice', headings: ['done', 'good', 'bad'] },
  { of: 'animal', headings: ['day', 'wrong'] },
  { of: 'household', headings: ['work', 'visits', 'money'] },
  { of: 'unknown', headings: ['unknown'] },
] as const satisfies readonly { readonly of: string; readonly headings: readonly OptionHeading[] }[]

export function choicesOf({ file }: OwnerPageInput): OptionId[] {
  const species = file.theCase.latest('identity')?.body.species
  return species ? optionsFor(species, optionIds, optionFacts) : []
}

/** Every choice one after another, under the same headings, with what studies counted. */
export function choicesPart(input: OwnerPageInput, species: Species, numbered: Numbered): Part {
  const { asked, words } = input
  const { page, options } = words
  const choices = choicesOf(input)
  const told = choices.map((id) => {
    const figures = figuresOf(id, species, input)
    const others = [asked.a, asked.b].filter((one): one is OptionId => one !== null && one !== id)
    const beside = others[0] ?? (id === 'no-treatment' ? 'medical-control' : 'no-treatment')
    const link = fill(page.compareLink, { option: options.options[beside].name })
    return html`<article id="choice-${id}" aria-labelledby="choice-${id}-title">
<h3 id="choice-${id}-title">${options.options[id].name}</h3>
${groups.map((group) => groupHtml(group, toldOf(id, species, input), { input, numbered }))}
${figures ? figuresHtml(figures, id, species, { input, numbered }) : html`<p class="quiet">${page.noFigures}</p>`}
<p class="turn screen"><a href="${hrefOf(asked, { a: beside, b: id }, 'two')}">${link}</a> <a href="#choices">${page.backToChoices}</a></p>
</article>
`
  })
  const contents = choices.map((id) => html`<li><a href="#choice-${id}">${options.options[id].name}</a></li>`)
  return {
    id: 'choices',
    title: page.choices,
    body: [
      ...lines([page.choicesIntro, fill(page.figuresIntro, { name: nameOf(input) })]),
      html`<ul class="screen">${contents}</ul>\n`,
      pickTwo(input, choices),
      ...told,
      ...bothEarsHtml(input, species, numbered),
    ],
  }
}

/** When both ears are ill: on one day, or one after the other, told in the same way as every choice. */
function bothEarsHtml(input: OwnerPageInput, species: Species, numbered: Numbered): Html[] {
  if (affectedEars(input.file.theCase).length !== 2) return []
  const { leaflet, options } = input.words
  return [
    html`<h3 id="both-ears">${leaflet.bothEars}</h3>\n<p>${leaflet.bothEarsIntro}</p>\n`,
    ...sessionIds.map((id) => {
      const parts = groups.map((group) => groupHtml(group, toldOf(id, species, input), { input, numbered }, 'h5'))
      return html`<article aria-labelledby="choice-${id}-title"><h4 id="choice-${id}-title">${options.options[id].name}</h4>${parts}</article>\n`
    }),
  ]
}

type Around = { readonly input: OwnerPageInput; readonly numbered: Numbered }

function groupHtml(
  { of, headings }: (typeof groups)[number],
  told: readonly Told[],
  { input, numbered }: Around,
  level: 'h4' | 'h5' = 'h4',
): Html {
  const { page, options } = input.words
  const rows = told.filter(({ heading }) => headings.some((one) => one === heading))
  const list = html`<dl>${rows.map(
    ({ heading, text, known }) =>
      html`<div><dt>${options.headings[heading]}</dt><dd>${text} <small>[${numbered(known)}]</small></dd></div>`,
  )}</dl>
`
  const title = { choice: null, unknown: null, animal: page.animalLine, household: page.householdLine }[of]
  if (title === null) return list
  const said = fill(title, { name: nameOf(input) })
  return level === 'h4' ? html`<h4>${said}</h4>\n${list}` : html`<h5>${said}</h5>\n${list}`
}

function toldOf(id: ToldId, species: Species, { words }: OwnerPageInput): Told[] {
  return toldFor(optionNamed(id, optionFacts), species, words.options)
}

function figuresOf(id: OptionId, species: Species, { words, file }: OwnerPageInput): Figures | null {
  const procedure = procedureIds.find((one) => one === id)
  return procedure ? figuresFor(procedure, { species, house: file.house }, words) : null
}

function figuresHtml({ counted, uncounted }: Figures, id: OptionId, species: Species, around: Around): Html {
  const { page } = around.input.words
  const about = { animals: page.animals[species], list: uncounted.join('; ') }
  return html`<h4 id="figures-${id}">${page.figures}</h4>
${counted.length === 0 ? html`<p>${page.noFigures}</p>` : keyHtml(around)}
${counted.map((figure) => figureHtml(figure, around))}
${uncounted.length === 0 ? html`` : html`<p class="unknown"><strong>${page.unknownTitle}.</strong> ${fill(page.unknown, about)}</p>`}
`
}

function keyHtml({ input: { words } }: Around): Html {
  const { dotsKey } = words.page
  const one = (full: number, between: number, text: string) =>
    html`<li><span class="sample" aria-hidden="true">${dotSquare({ full, between }, '')}</span>${text}</li>`
  return html`<ul class="key">${one(100, 0, dotsKey.had)}${one(0, 100, dotsKey.between)}${one(0, 0, dotsKey.without)}</ul>\n`
}

function figureHtml(figure: Figure, { input, numbered }: Around): Html {
  const { page } = input.words
  const { name, group, dots, framing, range, studies, details, rows } = figure
  const said = `${group}: ${framing}`
  return html`<div class="figure">
<h5>${name.charAt(0).toUpperCase()}${name.slice(1)}</h5>
<div class="square">${dotSquare(dots, said)}</div>
<p class="group">${group}</p>
<p class="framing">${framing}</p>
<p>${range ?? ''} ${studies} <small>[${numbered(rows)}]</small></p>
<details><summary>${page.whereFrom}</summary>${lines(details)}</details>
</div>
`
}

/** Two choices are picked with two lists and a button that ask for another page: no script is needed. */
function pickTwo({ asked, words }: OwnerPageInput, choices: readonly OptionId[]): Html {
  const { page, options } = words
  const list = (name: 'a' | 'b', label: string, chosen: OptionId | undefined) => html`<p><label>${label}<br>
<select name="${name}">${choices.map(
    (id) => html`<option value="${id}"${id === chosen ? html` selected` : html``}>${options.options[id].name}</option>`,
  )}</select></label></p>
`
  const kept = asked.language === null ? html`` : html`<input type="hidden" name="language" value="${asked.language}">`
  return html`<form class="pick screen" method="get" action="#two" aria-labelledby="pick-title">
<h3 id="pick-title">${page.compare}</h3>
${list('a', page.compareFirst, asked.a ?? choices[0])}${list('b', page.compareSecond, asked.b ?? choices.at(-2))}${kept}
<button type="submit">${page.compareShow}</button>
</form>
`
}

/** Two choices facing each other, row by row; on a phone one under the other. Null when none were asked for. */
export function twoPart(input: OwnerPageInput, species: Species): Part | null {
  const { asked, words } = input
  const { page, options } = words
  const { a, b } = asked
  const choices = choicesOf(input)
  if (!a || !b || !choices.includes(a) || !choices.includes(b)) return null
  const names = { one: options.options[a].name, other: options.options[b].name }
  const end = html`<p class="screen"><a href="${hrefOf(asked, { a: null, b: null }, 'choices')}">${page.compareEnd}</a></p>\n`
  if (a === b) return { id: 'two', title: page.compare, body: [...lines([page.compareSame]), end] }
  const [one, other] = [toldOf(a, species, input), toldOf(b, species, input)]
  const rowHtml = (
    head: string,
    first: string,
    second: string,
  ) => html`<tr role="row"><th scope="row" role="rowheader">${head}</th>
<td role="cell"><b class="of">${names.one}</b>${first}</td><td role="cell"><b class="of">${names.other}</b>${second}</td></tr>
`
  const rows = groups.flatMap(({ of, headings }) => {
    const title = { choice: null, unknown: null, animal: page.animalLine, household: page.householdLine }[of]
    const group =
      title &&
      html`<tr role="row"><th colspan="3" scope="colgroup" role="columnheader">${fill(title, { name: nameOf(input) })}</th></tr>\n`
    const textOf = (told: readonly Told[], heading: OptionHeading) =>
      told.find((row) => row.heading === heading)?.text ?? ''
    const body = headings.map((heading) =>
      rowHtml(options.headings[heading], textOf(one, heading), textOf(other, heading)),
    )
    return group ? [group, ...body] : body
  })
  return {
    id: 'two',
    title: fill(page.compareTitle, names),
    body: [
      html`<table class="two" role="table"><thead><tr role="row"><th scope="col" role="columnheader">${page.comparePart}</th><th scope="col" role="columnheader">${names.one}</th><th scope="col" role="columnheader">${names.other}</th></tr></thead>
<tbody>${rows}${numberRows(a, b, species, { input, rowHtml })}</tbody></table>
`,
      end,
    ],
  }
}

type Rows = { readonly input: OwnerPageInput; readonly rowHtml: (head: string, one: string, other: string) => Html }

/** Every outcome that either of them was counted for, in the same unit; what the other lacks is said to be uncounted. */
function numberRows(a: OptionId, b: OptionId, species: Species, { input, rowHtml }: Rows): Html[] {
  const { page } = input.words
  const [one, other] = [a, b].map((id) => figuresOf(id, species, input)?.counted ?? [])
  const keyOf = ({ outcome, group }: Figure) => `${outcome} ${group}`
  const all = [...(one ?? []), ...(other ?? [])]
  const keys = [...new Set(all.map(keyOf))]
  const said = (figures: readonly Figure[] | undefined, key: string) =>
    figures?.find((figure) => keyOf(figure) === key)?.short ?? page.compareUncounted
  const rows = keys.map((key) => {
    const figure = all.find((item) => keyOf(item) === key)
    return rowHtml(`${figure?.group}: ${figure?.name}`, said(one, key), said(other, key))
  })
  const head = html`<tr role="row"><th colspan="3" scope="colgroup" role="columnheader">${page.compareNumbers}</th></tr>\n`
  return rows.length === 0 ? [] : [head, ...rows]
}
