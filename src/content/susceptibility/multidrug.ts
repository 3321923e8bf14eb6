import type { MultidrugRules } from '#core/culture/rules.ts'
import { inDataset, ours } from './provenance.ts'

const published = {
  ...inDataset,
  sources: ['magiorakos-2012', 'amr-dataset-2025'],
  where: 'categories of the 2012 paper as the dataset codes them',
  strength: 'guideline',
} as const

const fluoroquinolonesOfAnimals = ['enrofloxacin', 'marbofloxacin', 'orbifloxacin', 'pradofloxacin']

/**
 * The categories that count for multidrug resistance. A category counts once, however many of its drugs are resistant;
 * one to which the organism is always resistant is taken out of the list. The fluoroquinolones of animals count with
 * their human ones: our rule, the paper knows only people's.
 */
export const multidrug: MultidrugRules = {
  least: {
    value: 3,
    ...published,
    sources: ['magiorakos-2012', 'sweeney-2018'],
    where: 'not susceptible to at least one drug in three categories or more; extensively: in all but two or fewer',
  },
  left: 2,
  possibleFrom: { value: 0.5, ...ours, where: 'with fewer tested, that more cannot be excluded says nothing' },
  lists: [
    {
      id: 'staphylococcus-aureus',
      organisms: ['staphylococcus-aureus'],
      methicillinResistantIsMultidrug: true,
      categories: [
        { id: 'aminoglycosides', agents: ['gentamicin'] },
        { id: 'rifamycins', agents: ['rifampicin'] },
        { id: 'anti-mrsa-cephalosporins', agents: ['ceftaroline'] },
        { id: 'anti-staphylococcal-beta-lactams', agents: ['oxacillin', 'cefoxitin'], byMethicillin: true },
        { id: 'fluoroquinolones', agents: ['ciprofloxacin', 'moxifloxacin', ...fluoroquinolonesOfAnimals] },
        { id: 'folate-pathway-inhibitors', agents: ['trimethoprim-sulfonamide'] },
        { id: 'fusidanes', agents: ['fusidic-acid'] },
        { id: 'glycopeptides', agents: ['vancomycin', 'teicoplanin'] },
        { id: 'glycylcyclines', agents: ['tigecycline'] },
        { id: 'lincosamides', agents: ['clindamycin'] },
        { id: 'lipopeptides', agents: ['daptomycin'] },
        { id: 'macrolides', agents: ['erythromycin'] },
        { id: 'oxazolidinones', agents: ['linezolid'] },
        { id: 'phenicols', agents: ['chloramphenicol'] },
        { id: 'phosphonic-acids', agents: ['fosfomycin'] },
        { id: 'streptogramins', agents: ['quinupristin-dalfopristin'] },
        { id: 'tetracyclines', agents: ['tetracycline', 'doxycycline', 'minocycline'] },
      ],
      ...published,
    },
    {
      id: 'enterococcus',
      organisms: ['enterococcus'],
      categories: [
        { id: 'high-level-gentamicin', agents: ['gentamicin-high-level'] },
        { id: 'high-level-streptomycin', agents: ['streptomycin-high-level'] },
        { id: 'carbapenems', agents: ['imipenem', 'meropenem', 'doripenem'] },
        {
          id: 'fluoroquinolones',
          agents: ['ciprofloxacin', 'levofloxacin', 'moxifloxacin', ...fluoroquinolonesOfAnimals],
        },
        { id: 'glycopeptides', agents: ['vancomycin', 'teicoplanin'] },
        { id: 'glycylcyclines', agents: ['tigecycline'] },
        { id: 'lipopeptides', agents: ['daptomycin'] },
        { id: 'oxazolidinones', agents: ['linezolid'] },
        { id: 'penicillins', agents: ['ampicillin'] },
        { id: 'streptogramins', agents: ['quinupristin-dalfopristin'] },
        { id: 'tetracyclines', agents: ['doxycycline', 'minocycline'] },
      ],
      ...published,
    },
    {
      id: 'enterobacterales',
      organisms: ['enterobacterales'],
      categories: [
        { id: 'aminoglycosides', agents: ['gentamicin', 'tobramycin', 'amikacin', 'netilmicin'] },
        { id: 'anti-mrsa-cephalosporins', agents: ['ceftaroline'] },
        {
          id: 'antipseudomonal-penicillins-with-inhibitor',
          agents: ['piperacillin-tazobactam', 'ticarcillin-clavulanate'],
        },
        { id: 'carbapenems', agents: ['ertapenem', 'imipenem', 'meropenem', 'doripenem'] },
        { id: 'older-cephalosporins', agents: ['cefazolin', 'cefuroxime', 'cefalexin'] },
        {
          id: 'extended-spectrum-cephalosporins',
          agents: ['cefotaxime', 'ceftriaxone', 'ceftazidime', 'cefepime', 'cefpodoxime', 'cefovecin'],
        },
        { id: 'cephamycins', agents: ['cefoxitin'] },
        { id: 'fluoroquinolones', agents: ['ciprofloxacin', ...fluoroquinolonesOfAnimals] },
        { id: 'folate-pathway-inhibitors', agents: ['trimethoprim-sulfonamide'] },
        { id: 'glycylcyclines', agents: ['tigecycline'] },
        { id: 'monobactams', agents: ['aztreonam'] },
        { id: 'penicillins', agents: ['ampicillin'] },
        { id: 'penicillins-with-inhibitor', agents: ['amoxicillin-clavulanate', 'ampicillin-sulbactam'] },
        { id: 'phenicols', agents: ['chloramphenicol'] },
        { id: 'phosphonic-acids', agents: ['fosfomycin'] },
        { id: 'polymyxins', agents: ['colistin', 'polymyxin-b'] },
        { id: 'tetracyclines', agents: ['tetracycline', 'doxycycline', 'minocycline'] },
      ],
      ...published,
    },
    {
      id: 'pseudomonas-aeruginosa',
      organisms: ['pseudomonas-aeruginosa'],
      categories: [
        { id: 'aminoglycosides', agents: ['gentamicin', 'tobramycin', 'amikacin', 'netilmicin'] },
        { id: 'carbapenems', agents: ['imipenem', 'meropenem', 'doripenem'] },
        { id: 'cephalosporins', agents: ['ceftazidime', 'cefepime'] },
        { id: 'fluoroquinolones', agents: ['ciprofloxacin', 'levofloxacin', ...fluoroquinolonesOfAnimals] },
        { id: 'penicillins-with-inhibitor', agents: ['piperacillin-tazobactam', 'ticarcillin-clavulanate'] },
        { id: 'monobactams', agents: ['aztreonam'] },
        { id: 'phosphonic-acids', agents: ['fosfomycin'] },
        { id: 'polymyxins', agents: ['colistin', 'polymyxin-b'] },
      ],
      ...published,
    },
    {
      id: 'staphylococci-of-animals',
      organisms: ['staphylococcus-pseudintermedius', 'staphylococcus-schleiferi', 'staphylococcus-coagulans'],
      categories: [
        {
          id: 'beta-lactams',
          agents: ['oxacillin', 'cefalexin', 'cefazolin', 'amoxicillin-clavulanate'],
          byMethicillin: true,
        },
        { id: 'aminoglycosides', agents: ['gentamicin', 'amikacin'] },
        { id: 'fluoroquinolones', agents: ['ciprofloxacin', ...fluoroquinolonesOfAnimals] },
        { id: 'lincosamides', agents: ['clindamycin', 'lincomycin', 'erythromycin'] },
        { id: 'tetracyclines', agents: ['tetracycline', 'doxycycline', 'minocycline'] },
        { id: 'folate-pathway-inhibitors', agents: ['trimethoprim-sulfonamide'] },
        { id: 'phenicols', agents: ['chloramphenicol', 'florfenicol'] },
        { id: 'rifamycins', agents: ['rifampicin'] },
        { id: 'fusidanes', agents: ['fusidic-acid'] },
      ],
      ...ours,
      sources: ['house-judgement', 'sweeney-2018', 'magiorakos-2012'],
      where: 'working list after both papers; beta-lactams by oxacillin, macrolides and lincosamides as one',
    },
  ],
}
