import { commonPractice } from '../follow-up/provenance.ts'

/** The page that goes home with the owner. Plain words, short sentences; grade 8 at most (tested). */
export const homeInEnglish = {
  title: 'At home with {name}',
  operated: 'Operated ear',
  operatedValue: '{side}, on {date}',
  phoneNow: 'Phone us now if you see any of these',
  phones: 'By day: {phone}. At night and on weekends: {night}.',
  phoneNowItems: {
    value: [
      'swelling of the face, neck or throat',
      'hard or noisy breathing',
      'an eye that is shut, cloudy or red',
      'bleeding that does not stop',
      'no food eaten for a whole day',
      'pain that the medicine does not calm',
      'pain when the mouth opens, or a new swelling below the ear, even months from now',
    ],
    ...commonPractice,
  },
  newSign:
    'There is no ear canal any more, so a discharge can no longer warn you. From now on pain or swelling is the warning sign.',
  newSignWord: 'The warning sign has changed',
  newSignKept: 'Pain or swelling near the ear is a warning sign, with or without discharge.',
  tonight: 'Tonight',
  tonightItems: {
    value: [
      'Keep the room warm and quiet. Sleep is normal after an operation.',
      'Offer water, then a small meal.',
      'The head may lean and the steps may sway. Block the stairs and help on smooth floors.',
    ],
    ...commonPractice,
  },
  medicines: 'Medicines',
  noMedicines: 'No medicine to give at home was written down.',
  clockCaption: 'How much to give at which time, by the clock on your wall',
  columns: { medicine: 'Medicine', time: 'At', give: 'Each time', last: 'Last dose', total: 'In all' },
  firstDose: 'first dose {first}',
  forPurpose: 'for {purpose}',
  side: '{side} side only',
  food: { yes: 'with food', no: 'on an empty stomach', either: 'with or without food' },
  clockSkips: 'The clocks change on {day}. Your clock will not show {time}. Give that dose at {shown}.',
  clockTwice: 'The clocks change on {day}. Your clock shows {time} twice. Give that dose once, the first time.',
  forgotten: 'A dose forgotten? Do not give two at once. Phone us.',
  noHumanMedicine: 'Give no medicine of your own. Some that help people can kill a dog or a cat.',
  units: {
    tablet: { one: '{count} tablet', many: '{count} tablets' },
    liquid: { one: '{count} mL', many: '{count} mL' },
    'eye-gel': { one: '{count} drop', many: '{count} drops' },
    'eye-ointment': { one: '{count} cm', many: '{count} cm' },
  },
  eye: 'Eye',
  eyeNow: {
    normal: 'When last seen, on {date}, the {side} eye blinked well.',
    weak: 'When last seen, on {date}, the {side} eye blinked weakly.',
    absent: 'When last seen, on {date}, the {side} eye did not blink.',
    'not-assessed': 'The blink of the {side} eye was not tested when last seen, on {date}.',
    'not-recorded': 'Nobody has written down whether the {side} eye blinks. Ask us before you go home.',
  },
  eyeBlock: 'The numbing medicine may still be at work. We will look again.',
  eyeUntil:
    'An eye that does not blink dries out. Go on with the eye care until we have seen a normal blink. The face may need weeks; the eye cannot wait a day.',
  eyeCareMissing: 'How to care for the eye was not written down. Ask us before you go home.',
  collar: 'Collar',
  collarUntil: 'Day and night until {date}. Take it off only while you watch.',
  collarWhy: 'One scratch can open the wound.',
  wound: 'Wound',
  sutures: {
    'to-come-out': 'The stitches have to come out. Do not let them get wet.',
    dissolve: 'The stitches dissolve by themselves. Do not let them get wet.',
    none: 'There are no stitches to take out.',
  },
  eating: 'Food',
  rest: 'Rest and balance',
  next: 'Next visit',
  nextOn: '{date}. Bring the medicines and this page.',
  nextNone: 'No visit has been booked. Phone us to book one.',
  waiting: 'Results still to come:',
  waitingItem: '{tests}, taken on {date}',
  weWillPhone: 'We will phone you, whatever the result is.',
  taughtBy: 'Talked over with {person}: {items}.',
  taughtItems: {
    'which-ear': 'which ear',
    'two-risks': 'two risks',
    'eye-care': 'eye care',
    collar: 'collar',
    'when-to-phone': 'when to phone',
    medicines: 'medicines',
  },
  taughtAnswers: {
    'own-words': 'said in your own words',
    'with-help': 'said with help',
    'not-yet': 'not clear yet: ask us again',
  },
  tests: {
    cytology: 'look under the microscope',
    'aerobic-culture': 'test for bacteria',
    'anaerobic-culture': 'test for bacteria that live without air',
    'fungal-culture': 'test for yeasts and moulds',
    histology: 'tissue test',
  },
} as const

/** On the page until it may be handed out; said to the clinic, whatever language the household speaks. */
export const homeForClinicInEnglish = {
  notYetWord: 'Stop',
  notYet: 'For the clinic: do not hand this page out yet. A check of the medicines asks for a person.',
} as const
