import type { HygieneRules } from '#core/owed/hygiene.ts'
import { susceptibility } from '../susceptibility/index.ts'
import { hygieneForClinic } from '../wording/hygiene.ts'

/** By what an organism is known that asks for hygiene, and what is then done. */
export const hygieneRules: HygieneRules = { facts: susceptibility, practice: hygieneForClinic.practice }
