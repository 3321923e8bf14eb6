import type { Sourced } from '#core/evidence/sourced.ts'

/** What works alike: the rules of resistance speak of these, never of a name that happens to end in -cillin. */
export const agentFamilies = [
  'penicillin',
  'aminopenicillin',
  'staphylococcal-penicillin',
  'carboxypenicillin',
  'ureidopenicillin',
  'aminopenicillin-with-inhibitor',
  'antipseudomonal-penicillin-with-inhibitor',
  'temocillin',
  'first-generation-cephalosporin',
  'second-generation-cephalosporin',
  'cephamycin',
  'third-generation-cephalosporin',
  'fourth-generation-cephalosporin',
  'mrsa-cephalosporin',
  'carbapenem',
  'monobactam',
  'aminoglycoside',
  'aminocyclitol',
  'fluoroquinolone',
  'quinolone',
  'macrolide',
  'lincosamide',
  'streptogramin',
  'tetracycline',
  'glycylcycline',
  'folate-inhibitor',
  'phenicol',
  'rifamycin',
  'glycopeptide',
  'oxazolidinone',
  'lipopeptide',
  'polymyxin',
  'fusidane',
  'nitrofuran',
  'nitroimidazole',
  'phosphonic-acid',
  'mupirocin',
  'bacitracin',
  'silver',
  'antifungal',
] as const
export type AgentFamily = (typeof agentFamilies)[number]

export const cephalosporins: readonly AgentFamily[] = [
  'first-generation-cephalosporin',
  'second-generation-cephalosporin',
  'cephamycin',
  'third-generation-cephalosporin',
  'fourth-generation-cephalosporin',
]

/** All but the two cephalosporins made against methicillin-resistant staphylococci. */
export const betaLactams: readonly AgentFamily[] = [
  'penicillin',
  'aminopenicillin',
  'staphylococcal-penicillin',
  'carboxypenicillin',
  'ureidopenicillin',
  'aminopenicillin-with-inhibitor',
  'antipseudomonal-penicillin-with-inhibitor',
  'temocillin',
  ...cephalosporins,
  'carbapenem',
  'monobactam',
]

/** A drug that a laboratory tests. It has the id of the formulary where the formulary holds it. */
export type Agent = {
  readonly id: string
  readonly name: string
  readonly family: AgentFamily
  /** The drug of the formulary that it stands for; null where the formulary holds none. */
  readonly formulary: string | null
  /** As laboratories write it; one that two drugs share stands for neither of them. */
  readonly aliases: readonly string[]
  /** Numbers of its susceptibility tests; what method each means is not known here. */
  readonly loinc?: Sourced<readonly string[]>
}

/**
 * The drug of an id.
 *
 * @example agentById(agents, 'polymyxin-b')?.family // 'polymyxin'
 */
export function agentById(agents: readonly Agent[], id: string | null): Agent | undefined {
  return agents.find((agent) => agent.id === id)
}
