import type { DoseCode } from '#core/dosing/findings.ts'

/** What a person reads for each finding of a planned dose. A refusal says what would make it possible. */
export const doseFindingWords = {
  'shelf-expired':
    '{label} on the shelf was to be used until {until}. Take a pack that is in date and write its date on the shelf, or give the reason.',
  'shelf-out':
    '{label} has been out of stock since {since}. Look before you draw it up; write on the shelf that it is back.',
  'drug-unknown': 'The formulary has no drug called "{drug}". Near names: {near}.',
  'forbidden-for-species': '{drug} is forbidden in a {species}: {because}. Choose another drug.',
  'no-dose-for-species':
    'No dose of {drug} for a {species} is known here for {use}: {because}. Choose another drug, or a use that is listed: {rows}.',
  'use-not-listed': '{drug} has no row for {use} in a {species}. Listed: {rows}.',
  'route-not-listed': '{drug} has no row for {use} by "{route}" in a {species} with the words given. Listed: {rows}.',
  'dose-unit-not-listed': '{drug} for {use} in a {species} is not dosed in {unit}. Listed: {rows}.',
  'row-ambiguous':
    '{drug} for {use} in a {species} fits more than one row. Say which, by route, qualifier or unit: {rows}.',
  'dose-not-chosen':
    'Nobody chose a dose of {drug}. Known range: {low} to {high}; other sources: {others}. Give a dose, name a plan, or set a house policy.',
  'choice-ambiguous':
    'More than one dose that this house chose fits {drug} for {use}: {choices}. State route and words of the row, name the line of the plan, or give a dose.',
  'plan-unknown': 'There is no plan called "{plan}". Name one of these: {plans}.',
  'plan-for-other-species':
    'The plan "{plan}" is for a {other}, not for a {species}. Name another plan, or correct the species.',
  'emergency-declared':
    '{by} declared an emergency: {reason}. What it lifts is still said below; a second name is owed within {within}.',
  'emergency-declared-for':
    '{by} declared an emergency: {reason}. It lifts only what it names ({only}), still said below; a second name is owed within {within}.',
  'emergency-lifts-nothing':
    '{by} declared an emergency: {reason}. What it is to lift ("{lifts}") names no drug, class or check known here, so it lifts nothing. Name the drug, or leave that empty to lift every block.',
  excluded: '{drug} is excluded here ({why}): {because}. Take another drug, or correct the record if it is wrong.',
  'excluded-by-given': '{drug} is excluded after {why}: {because}. Wait, or take another drug.',
  'given-time-unknown':
    'When {drug} was given is not known against the time of this plan; it counts in full. Record both times.',
  'given-from-later':
    '{given} lies after the time of this plan. Correct its time or that of the plan, whichever is wrong.',
  'age-unknown': 'The age is not stated, and {drug} is barred {because}. State ageMonths.',
  caution: '{drug}, {why}: {because}.',
  'kidney-drug-with-raised-creatinine': '{drug}: {because}. {possible}.',
  'nsaid-after-blood-loss': '{drug}: {because}. {possible}.',
  'unsafe-in-pregnancy': '{drug} ({why}): {because}. {possible}.',
  'ototoxic-with-open-ear': '{drug} ({why}): {because}. {possible}.',
  'ototoxic-in-open-ear': 'In the ear already: {given} ({why}): {because}. Stop it, and watch hearing and balance.',
  'only-saline-in-open-ear':
    '{drug} into the ear ({why}): only saline or water until the drum was seen whole. Look first, or give the reason.',
  'drums-unknown':
    'Nobody says whether the drums are whole, and {drug} harms hearing and balance where the ear lies open. Look, and record both.',
  'ear-product-not-measured':
    'Nothing here works out how much {drug} goes into an ear: the label of the product says it. Only what it meets is judged.',
  'drying-drug-with-dry-eye': '{drug} ({why}): {because}. {possible}.',
  'sedation-with-flat-face': '{drug} ({why}): {because}. {possible}.',
  'thin-start-low':
    'Body condition {score} of 9: a thin animal starts at the low end, counted on the weight measured. Check each dose.',
  'breed-not-known': 'No usual weight of the breed "{breed}" is known here, so the weight was not held against it.',
  'local-anaesthetic-toxicity-suspected': '{drug}: {because}. {possible}.',
  'condition-unjudged':
    'Nothing here says what this means for a drug of the plan: {unjudged}. That is not known, and no "it may be given".',
  'dose-above-reduced-range':
    '{dose} of {drug} is above {most}, what is left of the range ({high}) in this animal ({why}). Plan less, or give the reason.',
  'xylitol-in-liquid':
    'Some liquids of {drug} hold xylitol, which harms dogs. Read the label of the bottle in hand, and send xylitolFree.',
  'dose-below-range': '{dose} of {drug} is below the range {low} to {high}.',
  'dose-above-range':
    '{dose} of {drug} is above the range {low} to {high} ({factor} times its upper end). Other sources reaching it: {others}.',
  'dose-twice-range':
    '{dose} of {drug} is {factor} times the upper end of the range {low} to {high}: give the reason and a second person. Other sources reaching it: {others}.',
  'dose-five-times-range':
    '{dose} of {drug} is {factor} times the upper end of the range {low} to {high}. Check number and unit; a dose of this size is not planned here.',
  'dose-unit-suspected':
    '{dose} of {drug} is {factor} times the upper end of the range {low} to {high}: was the unit mistaken (milligram for microgram)? Write the dose again, with the unit that is meant.',
  'dose-unit-suspected-low':
    '{dose} of {drug} is a hundredth of the range {low} to {high} or less: was the unit mistaken (microgram for milligram)? Write the dose again, with the unit that is meant.',
  'dose-time-suspected':
    '{dose} of {drug}: the number fits the range {low} to {high}, the time does not. Was the hour mistaken for the minute? Write the dose in the unit of the range.',
  'over-single-maximum':
    '{amount} of {drug} is over the most for one dose, {most} (limit {limit}). Plan {most} or less.',
  'over-daily-maximum':
    '{drug} would reach {sum} in one day; the most is {most} ({words}). Plan less, wait, or write a course that begins later as a plan of its own.',
  'over-daily-maximum-at-shortest':
    '{drug} {interval}: at the shortest gap it would reach {sum} in one day; the most is {most} ({words}). Write the longer gap.',
  'over-daily-maximum-in-time':
    '{drug} has no end in this plan; with what is counted already it reaches the most of a day, {most} ({words}), after {after}. State over.',
  'repeat-too-soon': '{drug} was given {ago} ago ({given}) and is repeated {interval}. Wait, or give the reason.',
  'repeat-from-later':
    '{drug} is repeated {interval}, and {given} lies after the time of this plan, or on the same day at an unknown time. Correct its time, wait, or give the reason.',
  'same-drug-twice':
    '{drug} is here more than once for {use}: also {others}; together {sum}. Leave one out, or mean each.',
  'same-drug-twice-over-maximum':
    '{drug} is here more than once for {use}: also {others}; together {sum}, over the most for one dose ({most}). Leave one out, plan less, or give the reason.',
  'home-too-often': '{drug} is written for {times} times a day at home; it is given {interval}. Take times out.',
  'home-not-checked':
    '{drug}: not checked. Nobody here knows this medicine: dose, limit, species and the other medicines beside it were not looked at. Look it up, and confirm that it is meant.',
  'home-not-checked-named':
    '{drug} is not in the formulary by that name; its words name {named}. As {named} it was held against the species and the other medicines; whether it holds anything else was not looked at. Choose the drug from the list, or confirm.',
  'home-not-checked-eye':
    '{drug}: not checked. The formulary has no row for it in an eye of a {species}. Take another medicine, or confirm that it is meant.',
  'home-dose-not-checked':
    '{drug}: its dose was not checked, because its strength is not written in mg. Write the strength, or confirm.',
  'home-tablet-part':
    '{each} tablet of {drug}: a tablet of this strength is given in {parts}. Write an amount that can be cut, or take another strength or a liquid.',
  'home-side-other':
    '{drug} is for the {side} {part}. The operation was on the {operated}, and no entry finds anything wrong with the {side} {part}. Change the side, or confirm that the {side} {part} is meant.',
  'home-eye-other':
    '{drug} is for the {side} eye, and no entry finds anything wrong with that eye. The {other} eye blinks {blink}. Change the side, or confirm that the {side} eye is meant.',
  'home-side-missing': '{drug} does not say for which {part}. Write LEFT or RIGHT; for both write it twice.',
  'home-eye-nothing':
    'The {side} eye did not blink when last seen, and no medicine for it goes home. Gel is asked for every {gel} hours while awake, and ointment for the night. Write it, or confirm that none is meant.',
  'home-eye-less':
    'The {side} eye did not blink when last seen. At home it gets {plan}; asked for is gel every {gel} hours while awake (or ointment every {ointment} hours), and ointment for the night. Write more clock times or an ointment for the night, or confirm that less is meant.',
  'home-first-before-operation':
    '“First day at home” of {drug} is {first}, before the operation of {operated}. It went home on {home}: write the first day from then on.',
  'home-first-before-home':
    '“First day at home” of {drug} is {first}, before going home on {home}. Write the first day from then on.',
  'home-first-late':
    '“First day at home” of {drug} is {first}, more than {days} days after the entry of {sent} that sends it home. Correct the day or the year, or confirm that nothing is given until then.',
  'home-stop-before-home':
    '“Given no more from (day)” of {drug} is {day}, before going home on {home}. Write a day after that.',
  'home-stop-far':
    '“Given no more from (day)” of {drug} is {day}, more than {months} months after going home on {home}. Correct the year.',
  'home-collar-before': '“Collar until” is {day}, before going home on {home}. Write a day after that.',
  'home-collar-far':
    '“Collar until” is {day}, more than {months} months after going home on {home}. Correct the year, or confirm.',
  'home-visit-before':
    '“Next visit” is {day}, before going home on {home}. Write a day after that, or leave it empty when none is agreed.',
  'home-visit-far':
    '“Next visit” is {day}, more than {months} months after going home on {home}. Correct the year, or confirm.',
  'weight-unknown': 'The weight is not known. Weigh the animal; an estimate must be marked as one.',
  'weight-impossible':
    '{weight} is not a weight of a {species} (possible here: {low} to {high}). Weigh again; a second person may stand for it with a reason.',
  'weight-unusual': '{weight} is unusual for a {species} (usual: {low} to {high}).',
  'weight-confirmed-by-person': '{weight} lies outside {low} to {high}; {by} stands for it: {reason}.',
  'weight-unconfirmed': 'The weight of {weight} itself has to be confirmed first.',
  'weight-from-later':
    'The weight is dated {hours} h after the time of this plan. Correct weighedAt or at, whichever is wrong.',
  'weight-old': 'The weight is {hours} h old (limit {limit} h). Weigh again.',
  'weight-estimated': 'The weight is an estimate. Weigh when it can be done.',
  'weight-age-unknown': 'It is not known whether the weight is from the last {hours} h. State weighedAt and at.',
  'weight-pounds-suspected': '{now} is {factor} times the last weight ({before}): pounds taken for kilograms?',
  'weight-decimal-slip': '{now} is {factor} times the last weight ({before}): a slipped decimal point?',
  'weight-changed': 'The weight changed by {percent} % (from {before} to {now}).',
  'weight-changed-much': 'The weight changed by {percent} % (from {before} to {now}): weigh again and confirm.',
  'lean-weight-used': '{drug} is counted on the lean weight, about {lean}, not on {weight}.',
  'weight-between':
    '{drug} is dosed between the lean weight ({lean}: {onLean}) and the measured one ({weight}: {onMeasured}) in a fat animal; worked out on the measured one. Choose, and write the dose for it.',
  'weight-unlike-breed':
    '{weight} at body condition {score} is no usual weight of the breed ({breed}: {low} to {high}){doubt}. Weigh again.',
  'strength-not-chosen': 'The strength of {drug} in hand is not stated, so no volume is given. Usual: {known}.',
  'strength-not-listed':
    'A {drug} of {stock} is none of the usual strengths ({known}). Read the label again; say how it was mixed, if it was.',
  'strength-unit-suspected':
    'A {drug} of {stock} lies a hundredfold or more from every usual strength ({known}): was the unit mistaken? Read the label again; for a bag or syringe that was mixed, say how: what was drawn of which product, and into how much.',
  'strength-not-as-mixed':
    '{product} of {drug} in {final} make {made}, and the line says {stock}. Read both labels again.',
  'strength-percent-suspected':
    'A {drug} of {stock} is exactly a tenth of a usual strength ({known}). A label in per cent holds ten times as many mg/mL: 0.5 % is 5 mg/mL. Read the label again; say how it was mixed, if it was.',
  'strength-does-not-fit':
    '{amount} of {drug} cannot be taken from {stock}. State the strength of the product in hand.',
  'strength-undiluted':
    '{drug} of {stock} never runs undiluted. State the strength of the mixed bag: what is in it, divided by its volume.',
  'strength-hardly-diluted':
    '{drug} at {stock} is less than tenfold weaker than the product ({known}), which never runs undiluted. Work out again what the bag holds; take more fluid, or give the reason.',
  'strength-of-other-formulation':
    '{stock} is {drug} of another formulation ({other}), which has doses of its own and is never interchanged. Take {known}, or plan the other formulation by its name.',
  'strength-easily-confused':
    '{drug} of {stock} is easily taken for {others}. Read the label aloud, strength included.',
  'strength-for-other-route': '{stock} of {drug} is made for use {madeFor}, not {route}. Take a bottle of {known}.',
  'volume-too-small': '{volume} of {drug} cannot be drawn exactly (least: {least}). Dilute: {offer}.',
  'volume-large': '{volume} of {drug} is more than {most} in one injection. Check the strength.',
  'rounded-to-nothing':
    '{volume} of {drug} rounds down to nothing on the syringe that holds it. Take a weaker product or a finer syringe.',
  'rounding-shifts-dose':
    'The syringe turns {dose} of {drug} into {delivered} ({percent} % off). Take another strength or syringe.',
  'tablet-not-cut': 'Whether the {strength} tablet of {drug} may be cut is not known; whole tablets are counted.',
  'tablet-does-not-fit':
    'No number of {strength} tablets of {drug} (division: {divides}) gives {amount} within the limit. Take another size or a liquid.',
  'tablet-direction-unknown':
    'Which way the label of the {strength} tablet of {drug} rounds is not known: rounded {way} to {count} tablet(s), {delivered}. Fewer are counted where they stay in the range, unless the label in hand says otherwise; read it, and say it with the tablet.',
  'tablet-rounding':
    '{count} tablet(s) of {strength} of {drug} give {delivered} where {amount} was planned. Take another size, or give the reason.',
  'local-anaesthetic-ceiling':
    '{drug} would bring local anaesthetic to {sum} of the animal’s limit of 1 (all routes and both ears together). Left for this drug: {left} (full limit {limit}). Plan less, dilute for volume, or wait for washout.',
  'local-anaesthetic-infusion':
    'Local anaesthetic by infusion is {infusion} of the limit beside {others} from boluses and blocks. Method: {method}. Give the reason and a second person, or stop the infusion.',
  'local-anaesthetic-uncounted':
    'How much of which local anaesthetic was in {given} is not known, so there is no room to count {drug} into. Record drug and strength.',
  'nsaid-with-steroid':
    '{drug} meets {other}: NSAID and steroid, {because}. {left}. Wait, or take pain relief of another class.',
  'two-nsaids': '{drug} meets {other}: {because}. {left}. Keep one of them.',
  'pair-forbidden': '{drug} must not meet {other}: {because}. {left}. Keep one of them, or wait.',
  'pair-to-think-about': '{drug} meets {other}: {because}. {left}.',
  'given-drug-unknown':
    '{given} is not in the formulary (near names: {near}): it counts in no check. Say which drug it was.',
  'given-drug-read-as': '{given} is not in the formulary by that name and is counted as {read}. Say which it was.',
  'given-strength-doubted':
    '{given} is said to be of {stock}, a tenth or less of the usual strengths ({known}), and is counted so. A label in per cent holds ten times as many mg/mL. Correct the record, or stand for it.',
  'given-amount-doubted':
    '{given} is a hundredth of the lowest dose ({low}) or less, and is counted so: was the unit mistaken (microgram for milligram)? Correct the record, or stand for it.',
  'given-active-unknown':
    'Which active is in {given}? Nobody has settled it, and {drug} depends on it: {because}. Were it one of these: {left}. Ask, and record the active.',
  'patch-not-a-size':
    'There is no {drug} patch of {amount}, and a patch is never cut. Sizes: {sizes}; usual at {weight}: {usual}.',
  'patch-not-usual':
    'A {drug} patch of {amount} is not the usual one at {weight}: {usual}. Take that, or give the reason.',
  'age-very-young': '{age} months old: under 12 weeks. Doses of grown animals may be too much; check each.',
  'age-old': '{age} years old: over 10 years. Check kidney, liver and heart before the doses.',
  'blood-untyped':
    'Nobody typed this cat, and {drug} of the wrong group can kill a cat at the first transfusion. Type it (A, B or AB), and record the group.',
  'donor-untyped':
    'The group of the donor is not stated, and {drug} goes only from a typed donor into a cat. State the donor.',
  'blood-group-other': '{drug} of a {donor} donor for a {group} animal: take a donor of the same group.',
  'dog-untyped':
    'Donor, dog or both are not typed for DEA 1. Type them before {drug}; when it cannot wait, give the reason.',
  'cross-match-missing':
    'This dog was transfused before; {drug} needs a cross-match first. Make one, and state that it is compatible.',
  'cross-match-incompatible': 'The cross-match says that this {drug} does not fit. Take another donor.',
  'transfusions-unknown':
    'Whether this dog was ever transfused is not stated. Ask; after a transfusion {drug} needs a cross-match.',
  'first-transfusion': 'First transfusion of this dog: no cross-match is asked for; watch for a reaction all the same.',
  'rate-too-slow': '{drug} at {rate} is slower than a pump keeps exactly (least: {least}). Run a weaker dilution.',
  'container-disagrees':
    'The lines that share the {container} "{name}" state different volumes, rates, fluids or conventions. One {container} has one of each: write the same, or give another name.',
  'container-incomplete':
    'The {container} "{name}" also holds {other}, which is refused or has no strength, so nothing in it is worked out. Settle that line, or take it out of the {container}.',
  'container-not-infusion':
    '{drug} has a dose that is not per time; only infusions run from a {container}. Write the dose per hour or per minute.',
  'container-rate-other': 'The fluid is to run at {other}, the {container} "{name}" at {rate}. Write one rate.',
  'container-rate-tied':
    'The {container} "{name}" holds drugs: it is tied to {rate}. Every change of the fluid changes every dose, so run the drugs from a pump of their own.',
  'container-too-slow':
    'The drugs alone need {least}; the {container} "{name}" runs at {rate}. Choose a faster rate or a stronger product.',
  'container-too-little':
    '{drug} for the {container} "{name}" would be {volume}, too little to draw even diluted. Take a larger {container} or a slower rate.',
  'container-own-volume':
    'The drugs are {percent} % of the {container} "{name}". Take as much fluid out first, or its volume grows by as much.',
  'container-empties':
    'The {container} "{name}" is empty after {lasts}, and {drug} is to run for {hours}. Make the next one in time.',
  'pump-cannot': '{rate} is below the smallest step of a pump ({step}). Make the {container} "{name}" weaker.',
  'infusion-off':
    'Worked back from its label, the {container} "{name}" gives {percent} % more or less {drug} than prescribed. Take a larger {container}, a finer syringe or another rate.',
  'infusion-over-fluid-allowance':
    'The infusions of this plan bring {sum} of fluid by themselves, more than the {most} that anaesthesia starts with in a {species}. Make them stronger.',
  'mixture-alone': '{drug} does not share a container with {other}: {because}. Give each a syringe of its own.',
  'mixture-forbidden': '{drug} must not be mixed with {other}: {because}. Give each a line of its own.',
  'mixture-unknown':
    'No source here says that {drug} and {other} may be mixed. Run them apart, or give the reason and the source.',
  'carrier-forbidden': '{drug} does not run in {carrier}: {because}. Take {only}.',
  'dilution-forbidden': '{drug} is not diluted: {because}. Take a finer syringe, or another drug.',
  'loading-not-chosen':
    'Without a loading dose {drug} climbs for about {halfLives} half-lives to {reached} % of its level. Known loading dose: {low} to {high}. Choose one, or none on purpose.',
  'loading-range-unknown': 'No source here gives a loading dose of {drug}; {dose} stands for the person who chose it.',
  'loading-outside-range': 'The loading dose {dose} of {drug} lies outside {low} to {high}.',
  'loading-not-worked-out':
    'The loading dose {dose} of {drug} could not be worked out with the strength stated, so the whole line waits. State the strength, or plan the loading dose as a line of its own.',
  'fluid-over-most': 'Rate and deficit together are {sum}; the most is {most}. Take longer for the deficit.',
  'drip-set-unusual':
    'A set of {set} drops in a mL is none of the usual ({known}). Read the packet, or count the drops of a mL.',
  'drip-for-drug': 'Gravity keeps no rate. Run {drug} from a pump, or give the reason.',
  'drip-uneven':
    'Whole drops of a set of {set} in a mL turn {rate} of {drug} into {gives}. Take a finer set or a pump, or give the reason.',
  'drip-without-time': 'Over what time {drug} runs in is not stated, so no drops are counted. State over.',
  'interval-not-chosen':
    '{drug} is given {interval}; for {days} days nothing is counted out until one gap is chosen. State every.',
  'interval-other': 'Every {every} was chosen for {drug}; the formulary says {interval}.',
  'interval-too-short':
    'Every {every} was chosen for {drug}, an NSAID; its label gives one dose {interval}. Write the gap of the label.',
  'course-too-long':
    '{drug} is planned for {days} days; the most that its source knows is {words}. Write fewer days, or give the reason.',
  'label-table-none':
    'The label’s table of the {strength} tablet of {drug} has no line for {weight} ({known}). Take another size.',
  'label-over-maximum':
    'The table of this tablet’s own label gives {delivered} of {drug}; another label stops at {most}. Both are shown: decide by the label in hand.',
  'goal-and-dose': 'Both a dose and a goal are stated for {drug}. State one of them.',
  'goal-not-blood': 'A goal of PCV is reached with whole blood only; {drug} is dosed by weight. State a dose.',
  'goal-order': 'The goal of {aim} is not above the present {now}. Nothing is to be transfused for it.',
  'house-surface-factor':
    'House policy of {by}, {on}: the surface is {k} × kg^(2/3), not {own} as in the sources. Because: {because}.',
  'house-syringes':
    'House policy of {by}, {on}: syringes in mL are {syringes}; drawn with them: {lines}. Because: {because}.',
  'house-policy-unreadable':
    'The house policy {policy} ("{value}") cannot be read, or stands twice: nothing uses it, and the tool’s own holds. Write it again in the settings.',
  'duration-not-chosen': 'How long {drug} is to run is not stated; only the amount per hour is given.',
} as const satisfies Record<DoseCode, string>

/** Behind a finding that would bar the line, had nobody declared an emergency. */
export const liftedWords = {
  by: 'Lifted by the emergency declared by {by}.',
  byAt: 'Lifted by the emergency declared by {by} on {at}.',
} as const

/** Units whose UCUM spelling nobody should have to read in a sentence. */
export const spelledUnits = {
  '[drp]/{eye}': 'drops per eye',
  'cm/{eye}': 'cm per eye',
  'mg/{animal}': 'mg per animal',
  '%{vol}': '% by volume',
  '{tablet}': 'tablets',
} as const
