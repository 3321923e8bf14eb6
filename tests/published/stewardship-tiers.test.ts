import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { agentById } from '#core/culture/agent.ts'
import { recogniseAgent } from '#core/culture/recognise.ts'
import { tierOf } from '#core/culture/stewardship.ts'

// European Medicines Agency, EMA/CVMP/CHMP/682198/2017 (December 2019), as its copies and the reference of this house
// (vector SX085) have it: quinolones, later cephalosporins and polymyxins in B, and the C classes were read; the rest of
// the lists is remembered.
const published = {
  A: ['rifampicin', 'mupirocin', 'imipenem', 'piperacillin-tazobactam', 'vancomycin', 'linezolid'],
  B: ['cefovecin', 'cefpodoxime', 'enrofloxacin', 'polymyxin B'],
  C: [
    'amoxicillin-clavulanate',
    'cefalexin',
    'cefazolin',
    'clindamycin',
    'gentamicin',
    'amikacin',
    'chloramphenicol',
    'florfenicol',
    'rifaximin',
  ],
  D: ['amoxicillin', 'doxycycline', 'trimethoprim-sulfamethoxazole', 'fusidic acid', 'metronidazole', 'nitrofurantoin'],
} as const

describe('the categories of the European Medicines Agency', () => {
  const drugs = Object.entries(published).flatMap(([category, names]) => names.map((name) => [name, category] as const))

  it.each(drugs)('put %s into %s', (name, category) => {
    const { agents, tiers } = susceptibility
    const agent = agentById(agents, recogniseAgent(name, agents).id)
    expect(agent && tierOf(agent, tiers)?.value.category).toBe(category)
  })
})
