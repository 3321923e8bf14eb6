import type { MissingCode } from '#core/chapters/missing.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import { commonPractice, houseJudgementOnly, readStudy } from './provenance.ts'

/** Why a thing that is not on record matters, with who says so. */
export const missingReasons = {
  'referral-missing': {
    value: 'Without the first call nobody can say how urgent it was thought to be, and why.',
    ...commonPractice,
  },
  'identity-missing': { value: 'An ear is operated on one animal: name and species come first.', ...commonPractice },
  'household-missing': { value: 'Who decides, who pays and who nurses are not always one person.', ...commonPractice },
  'nobody-may-consent': { value: 'Consent counts only from somebody who may give it.', ...commonPractice },
  'chip-unknown': { value: 'A name is not enough to know an animal again.', ...commonPractice },
  'birth-unknown': { value: 'Hours without food depend on the age.', ...commonPractice },
  'red-flags-not-asked': {
    value: 'An animal with nerve signs that is booked as routine is lost time; flat-faced dogs often come with them.',
    ...readStudy,
    sources: ['common-practice', 'banks-2023'],
    where: 'extremely flat-faced dogs with nerve signs: 46 of 81',
  },
  'allergy-not-asked': { value: 'A drug allergy nobody asked about meets the animal in theatre.', ...commonPractice },
  'records-not-asked': { value: 'Without permission no letter and no scan can be fetched.', ...commonPractice },
  'side-unknown': { value: 'The side is kept as reported, so that a later one can disagree.', ...commonPractice },
  'history-missing': {
    value: 'Whether the disease behind the ear was treated, or only the infection, decides what surgery can bring.',
    ...commonPractice,
  },
  'medicines-missing': {
    value: 'The last steroid and the last anti-inflammatory decide which pain relief is allowed.',
    ...commonPractice,
  },
  'medicine-active-unknown': {
    value: 'Drops and white tablets may hold a steroid: silence about an active is a question, never a “no”.',
    ...houseJudgementOnly,
  },
  'ear-not-examined': { value: 'Both ears are looked at, even with one complaint.', ...commonPractice },
  'findings-not-assessed': { value: '“Not assessed” is not “normal”.', ...houseJudgementOnly },
  'cytology-missing': {
    value: 'Cocci, rods and yeast look alike to the eye and ask for different medicine; odd cells ask for tissue.',
    ...commonPractice,
  },
  'baseline-missing': {
    value: 'Without a baseline before any sedative, a weak face cannot be told from damage.',
    ...readStudy,
    sources: ['hartrum-2025'],
    where:
      'a weak face in 3 of 53 operations before and 25 on day 1; counts reconstructed from the printed percentages',
  },
  'baseline-not-assessed': { value: 'What was not looked at before cannot be compared after.', ...commonPractice },
  'weight-missing': { value: 'Every dose begins with a weight.', ...commonPractice },
  'imaging-missing': {
    value: 'What lies in the bulla and what is left of its wall decide the operation; the eye cannot see them.',
    ...commonPractice,
  },
  'imaging-side-not-reported': {
    value: 'A report that is silent about an ear says nothing about it.',
    ...houseJudgementOnly,
  },
  'blood-cells-missing': {
    value: 'How much blood may be lost is counted from the red cells it starts with.',
    ...commonPractice,
  },
  'blood-chemistry-missing': {
    value: 'Liver and kidneys decide which drugs, and how much of them, an animal can take.',
    ...commonPractice,
  },
  'clotting-missing': {
    value: 'The vein behind the jaw joint bleeds where it cannot be clamped: a clot has to form by itself.',
    ...houseJudgementOnly,
  },
  'blood-type-unknown': {
    value: 'A cat is typed before its first transfusion, always; a dog for DEA 1 where there is time.',
    sources: ['transfusion-texts'],
    known: 'remembered',
    strength: 'textbook',
    confidence: 'high',
    checked: '2026-11-25',
  },
  'choice-missing': { value: 'Every option is weighed for this ear before one is agreed.', ...commonPractice },
  'nothing-chosen': { value: 'An ear without a decision falls through every list.', ...houseJudgementOnly },
  'no-surgery-not-offered': {
    value: 'A choice without “no surgery” among its options is not a choice.',
    ...commonPractice,
  },
  'choice-lacks': { value: 'Named by the surgeon as missing for this choice.', ...commonPractice },
  'session-not-decided': {
    value: 'Both ears in one session or one after the other changes risk, price and nursing.',
    sources: ['coleman-2016', 'wainberg-2019'],
    ...readStudy,
  },
  'skin-plan-missing': {
    value:
      'Surgery takes the canal, not the allergy. One series saw complications cluster in dogs with skin disease, a larger one saw fewer: unresolved.',
    ...readStudy,
    sources: ['doyle-2004', 'fox-2008'],
    where: 'fewer in the series of 309 dogs: odds ratio 0.59',
  },
  'other-ear-plan-missing': {
    value: 'The other ear wears the same skin: nothing, watch, treat or operate later is said, with a day.',
    ...commonPractice,
  },
  'agreement-missing': { value: 'Consent is given for one side, one procedure and one ceiling.', ...commonPractice },
  'estimate-missing': {
    value: 'A single figure, or none, becomes a quarrel: low to high by line, with what is in and what is out.',
    ...commonPractice,
  },
  'estimate-not-answered': { value: 'Silence is not a yes: somebody accepts it, on a day.', ...commonPractice },
  'estimate-at-odds': {
    value: 'A limit under what it costs at least is passed on the first day.',
    ...houseJudgementOnly,
  },
  'consent-not-by-who-may': {
    value: 'The household does not name this person as one who may consent.',
    ...commonPractice,
  },
  'teach-back-open': { value: 'Most of what is said is forgotten unless it is said back.', ...commonPractice },
  'resuscitation-open': { value: 'The wish is asked before, because nobody can ask it during.', ...commonPractice },
  'booking-missing': { value: 'Agreed, and no day was given.', ...commonPractice },
  'assessment-missing': {
    value: 'Class and airway plan decide drugs, help and where the animal wakes up.',
    ...commonPractice,
  },
  'jaw-not-assessed': {
    value: 'Disease of bulla or joint can lock the jaw: a tube that cannot be passed is found out before, not after.',
    ...commonPractice,
  },
  'planned-lines-missing': { value: 'Doses are worked out and checked before, not at the table.', ...commonPractice },
  'pause-missing': {
    value: 'Each spoken pause is a place where a wrong side can still be stopped.',
    ...commonPractice,
  },
  'checkpoint-missing': {
    value: 'The report is drafted from the stamps; “not done” with its reason is an answer.',
    ...commonPractice,
  },
  'count-missing': { value: 'Swabs and throat pack are counted before anybody leaves.', ...commonPractice },
  'count-unequal': { value: 'Something was not found again: an incident until it is.', ...commonPractice },
  'throat-pack-in': { value: 'A forgotten pack closes the airway.', ...commonPractice },
  'bulla-sample-missing': {
    value: 'The canal does not speak for the bulla: samples before and after washing differed in many ears.',
    sources: ['hettlich-2005'],
    ...readStudy,
  },
  'loss-missing': {
    value: 'Blood loss that nobody wrote down cannot be compared with the blood volume.',
    ...commonPractice,
  },
  'summary-missing': {
    value: 'The operation is not finished until the surgeon has signed what was done.',
    ...commonPractice,
  },
  'first-blink-missing': {
    value: 'The first blink after the tube is out is the first answer about the nerve.',
    ...commonPractice,
  },
  'pain-not-scored': { value: '“Asleep, not scored” is not “without pain”.', ...commonPractice },
  'discharge-missing': { value: 'What goes home, until when, and what the owner said back.', ...commonPractice },
  'home-teach-back-open': { value: 'At home the owner is the only nurse.', ...commonPractice },
  'eye-care-not-said': { value: 'An eye that does not close dries out at home.', ...commonPractice },
  'year-status-missing': {
    value: 'Silence is never success: “unknown” is a result and is written down as one.',
    ...houseJudgementOnly,
  },
} as const satisfies Record<MissingCode, Sourced<string>>
