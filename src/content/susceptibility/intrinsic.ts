import { cephalosporins } from '#core/culture/agent.ts'
import type { Intrinsic } from '#core/culture/rules.ts'
import { clsiByMemory, inDataset, ours } from './provenance.ts'

const expected = { ...inDataset, where: 'expected resistant phenotypes v1.2' } as const
const alone = ['gentamicin-high-level', 'streptomycin-high-level']
const gramPositive = [
  'staphylococcus',
  'streptococcus',
  'enterococcus',
  'corynebacterium',
  'micrococcus',
  'bacillus',
  'actinomyces',
  'clostridium',
]
const chromosomalAmpc = ['enterobacter-cloacae', 'klebsiella-aerogenes', 'citrobacter-freundii']

/**
 * What an organism is always resistant to, whatever stands printed. A susceptible result against this table is kept as
 * the laboratory's word, and it is asked to name the organism again.
 */
export const intrinsic: readonly Intrinsic[] = [
  {
    organisms: gramPositive,
    drugs: { agents: ['nalidixic-acid'], families: ['monobactam', 'temocillin', 'polymyxin'] },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['staphylococcus-aureus', 'coagulase-negative-staphylococcus'],
    drugs: { agents: ['ceftazidime'] },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['staphylococcus-pseudintermedius', 'staphylococcus-schleiferi', 'staphylococcus-coagulans'],
    drugs: { agents: ['ceftazidime'] },
    verdict: 'R',
    ...ours,
    where: 'as in other staphylococci',
  },
  {
    organisms: ['streptococcus'],
    drugs: { agents: ['ceftazidime'], families: ['fusidane'] },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['streptococcus'],
    drugs: { families: ['aminoglycoside'], except: alone },
    verdict: 'R',
    lowLevel: true,
    ...expected,
  },
  {
    organisms: ['enterococcus'],
    drugs: { agents: ['sulfonamides'], families: [...cephalosporins, 'lincosamide', 'macrolide', 'fusidane'] },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['enterococcus'],
    drugs: { families: ['aminoglycoside'], except: alone },
    verdict: 'R',
    lowLevel: true,
    ...expected,
  },
  {
    organisms: ['enterococcus'],
    drugs: { agents: ['trimethoprim-sulfonamide'] },
    verdict: 'not-S',
    ...clsiByMemory,
    where: 'not to be reported susceptible',
  },
  {
    organisms: ['enterobacterales'],
    drugs: {
      families: ['penicillin', 'glycopeptide', 'fusidane', 'macrolide', 'lincosamide', 'rifamycin', 'oxazolidinone'],
    },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['klebsiella-pneumoniae', 'klebsiella-oxytoca'],
    drugs: { families: ['aminopenicillin', 'carboxypenicillin'] },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['proteus-mirabilis', 'proteus-vulgaris', 'proteus-penneri'],
    drugs: { families: ['tetracycline', 'polymyxin', 'nitrofuran'] },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['proteus-vulgaris', 'proteus-penneri'],
    drugs: { agents: ['cefuroxime'], families: ['aminopenicillin', 'first-generation-cephalosporin'] },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['morganella', 'providencia'],
    drugs: {
      agents: ['amoxicillin-clavulanate'],
      families: ['aminopenicillin', 'first-generation-cephalosporin', 'tetracycline', 'polymyxin', 'nitrofuran'],
    },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: [...chromosomalAmpc, 'serratia-marcescens'],
    drugs: {
      agents: ['amoxicillin-clavulanate', 'cefoxitin'],
      families: ['aminopenicillin', 'first-generation-cephalosporin'],
    },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['serratia-marcescens'],
    drugs: { agents: ['cefuroxime'], families: ['polymyxin', 'nitrofuran'] },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['pseudomonas-aeruginosa'],
    drugs: {
      agents: [
        'amoxicillin-clavulanate',
        'cefotaxime',
        'ceftriaxone',
        'ertapenem',
        'chloramphenicol',
        'trimethoprim',
        'kanamycin',
        'neomycin',
      ],
      families: [
        'aminopenicillin',
        'first-generation-cephalosporin',
        'second-generation-cephalosporin',
        'tetracycline',
        'macrolide',
        'lincosamide',
        'rifamycin',
        'fusidane',
        'oxazolidinone',
        'glycopeptide',
      ],
    },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['pseudomonas-aeruginosa'],
    drugs: { agents: ['trimethoprim-sulfonamide', 'cefovecin', 'cefpodoxime', 'benzylpenicillin'] },
    verdict: 'R',
    ...clsiByMemory,
    where: 'appendix on intrinsic resistance; cefovecin and cefpodoxime: no activity expected',
  },
  {
    organisms: ['pseudomonas-aeruginosa'],
    drugs: { agents: ['florfenicol'] },
    verdict: 'R',
    ...inDataset,
    sources: ['topical-ear-florfenicol-page'],
    confidence: 'medium',
  },
  {
    organisms: ['acinetobacter-baumannii'],
    drugs: {
      agents: [
        'amoxicillin-clavulanate',
        'cefotaxime',
        'ceftriaxone',
        'ertapenem',
        'trimethoprim',
        'tetracycline',
        'doxycycline',
      ],
      families: ['aminopenicillin'],
    },
    verdict: 'R',
    ...expected,
  },
  {
    organisms: ['stenotrophomonas-maltophilia'],
    drugs: {
      agents: [
        'ampicillin',
        'amoxicillin-clavulanate',
        'piperacillin-tazobactam',
        'cefotaxime',
        'ceftriaxone',
        'aztreonam',
        'trimethoprim',
        'tetracycline',
      ],
      families: ['carbapenem', 'aminoglycoside'],
    },
    verdict: 'R',
    ...expected,
    confidence: 'medium',
  },
  { organisms: ['corynebacterium'], drugs: { agents: ['fosfomycin'] }, verdict: 'R', ...expected },
  {
    organisms: ['anaerobes'],
    drugs: { families: ['aminoglycoside'] },
    verdict: 'R',
    ...clsiByMemory,
    sources: ['bacteriology-texts'],
    where: 'obligate anaerobes take up no aminoglycoside',
    strength: 'textbook',
  },
  {
    organisms: ['anaerobes'],
    drugs: { families: ['fluoroquinolone'], except: ['pradofloxacin', 'moxifloxacin'] },
    verdict: 'not-S',
    ...clsiByMemory,
    sources: ['bacteriology-texts'],
    where: 'poor activity but for pradofloxacin and moxifloxacin',
    strength: 'textbook',
  },
  {
    organisms: ['pasteurella'],
    drugs: { agents: ['clindamycin', 'lincomycin'] },
    verdict: 'not-S',
    ...clsiByMemory,
    where: 'usually inactive',
    confidence: 'medium',
  },
]
