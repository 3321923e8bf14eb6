import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { check as checkWords } from '#content/wording/app-forms/check.ts'
import { vetFormInEnglish as words } from '#content/wording/vet-form.ts'
import type { Side } from '#core/animal/species.ts'
import { type FieldWords, optionWord } from '#core/forms/words.ts'
import { fill } from '#core/outcome/finding.ts'
import { type LookField, notAssessed } from '#core/vet/look-fields.ts'
import { earPlace, type FaultAt, fieldName, mostLetters } from '#core/vet/read-answer.ts'
import { type Html, html } from '../render/markup.ts'
import { type VetFormInput, vetFields } from './input.ts'

const labels: Readonly<Record<string, FieldWords>> = checkWords.fields

/** The fields of the form, with what was typed before still in them. */
export function fieldsHtml(
  input: VetFormInput,
  ears: readonly { readonly side: Side }[],
  about: Readonly<Record<string, string>>,
): Html {
  const died = input.typed?.get('died') === 'yes'
  return html`${textField(input, 'by', words.by, words.byHelp, html`autocomplete="name" maxlength="300"`)}
${textField(input, 'day', words.day, null, html`autocomplete="off"`, 'date')}
${ears.map(({ side }) => earHtml(input, side))}
<div class="field"><label for="text">${words.text}</label>${faultLine(input, 'text')}
<textarea id="text" name="text" rows="4"${marks(input, 'text')}>${input.typed?.get('text') ?? ''}</textarea></div>
<div class="field tick"><label for="died"><input type="checkbox" id="died" name="died" value="yes" aria-describedby="died-help"${died ? html` checked` : html``}>${fill(words.died, about)}</label>
<small id="died-help">${words.diedHelp}</small></div>`
}

function earHtml(input: VetFormInput, side: Side): Html {
  const place = earPlace(side)
  return html`<fieldset class="ear" id="${place}"><legend>${fill(words.look, { side: words.ears[side] })}</legend>
${faultLine(input, place)}<div class="pairs">${vetFields.map((field) => fieldHtml(input, side, field))}</div></fieldset>
`
}

function fieldHtml(input: VetFormInput, side: Side, field: LookField): Html {
  const at = fieldName(side, field.name)
  if (field.kind === 'normal') return normalHtml(input, at, field.name)
  const label = labels[field.name]
  if (field.kind === 'number') {
    const said = fill(words.unit, { label: label?.label ?? field.name, unit: field.unit })
    return textField(input, at, said, label?.help ?? null, html`inputmode="decimal" autocomplete="off"`)
  }
  const chosen = input.typed?.get(at) ?? notAssessed
  // "Not assessed" stands first: it is what is sent of a question nobody touched.
  const options = [notAssessed, ...field.options.filter((option) => option !== notAssessed)]
  return html`<div class="field"><label for="${at}">${label?.label ?? field.name}</label>
<select id="${at}" name="${at}">${options.map(
    (option) =>
      html`<option value="${option}"${option === chosen ? html` selected` : html``}>${optionWord(label, formsInEnglish.options, option) ?? option}</option>`,
  )}</select></div>
`
}

/** One tick for what was looked at and is normal: it says itself what it answers. */
function normalHtml(input: VetFormInput, at: string, name: string): Html {
  const checked = input.typed?.get(at) === 'yes' ? html` checked` : html``
  return html`<div class="field tick whole">${faultLine(input, at)}<label for="${at}"><input type="checkbox" id="${at}" name="${at}" value="yes"${checked}${marks(input, at)}>${normalWord(name)}</label></div>
`
}

function normalWord(name: string): string {
  const words: Readonly<Record<string, string>> = checkWords.normal
  return words[name.replace('normal-', '')] ?? name
}

function textField(
  input: VetFormInput,
  at: string,
  label: string,
  help: string | null,
  more: Html,
  type: 'text' | 'date' = 'text',
): Html {
  const helped = help === null ? html`` : html`<small id="${at}-help">${help}</small>`
  return html`<div class="field"><label for="${at}">${label}</label>${helped}${faultLine(input, at)}
<input type="${type}" id="${at}" name="${at}" value="${input.typed?.get(at) ?? ''}" ${more}${marks(input, at, help !== null)}></div>
`
}

function marks({ faults }: VetFormInput, at: string, helped = false): Html {
  const wrong = faults.some((one) => one.at === at)
  const described = [...(helped ? [`${at}-help`] : []), ...(wrong ? [`${at}-wrong`] : [])].join(' ')
  return html`${described === '' ? html`` : html` aria-describedby="${described}"`}${wrong ? html` aria-invalid="true"` : html``}`
}

function faultLine({ faults }: VetFormInput, at: string): Html {
  const one = faults.find((fault) => fault.at === at)
  return one ? html`<span class="wrong" id="${at}-wrong">${faultSentence(one)}</span>` : html``
}

/** What would be right, with the name of the field. */
export function faultSentence({ at, fault }: FaultAt): string {
  const name = at.split('.')[1] ?? ''
  return fill(words.faults[fault], { label: labels[name]?.label ?? normalWord(name), letters: String(mostLetters) })
}
