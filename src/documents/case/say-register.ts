import { registerLine } from '#content/wording/app-forms/register-line.ts'
import { registerInEnglish as words } from '#content/wording/app-register.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Register, RegisterOf } from '#core/register/register.ts'
import { type Decimal, plain } from '#core/units/quantity.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { drugName } from './drug-name.ts'
import { sayUnit } from './say-quantity.ts'

/** "Methadone 10 mg/mL, injection". */
export function sayRegister({ drug, strength, form }: RegisterOf): string {
  return fill(words.name, {
    drug: drugName(drug),
    strength: sayUnit(strength),
    form: registerLine.fields.form.options[form],
  })
}

/** An amount in what the register is counted in. */
export function sayIn(value: Decimal, { unit }: Pick<Register, 'unit'>): string {
  return `${plain(value)} ${unitWord(unit)}`
}
