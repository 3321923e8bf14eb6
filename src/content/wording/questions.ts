/**
 * Every question to owners: the sentence, why it is asked, and its answers. Plain words, short sentences; grade 8 at most
 * (tested). What stands in an edition that was given out is pinned by `tests/content/questionnaires.test.ts`.
 */
export const questionsInEnglish = {
  'ear-now': {
    ask: 'How is the {side} ear now? Think of how it was before the operation.',
    why: 'You live with {name} and know the bad days. It helps us to tell the next owner what to expect.',
    choices: {
      'no-trouble': 'No trouble any more',
      better: 'Better than before',
      same: 'The same as before',
      worse: 'Worse than before',
      'cannot-tell': 'I cannot tell',
    },
  },
  swelling: {
    ask: 'Is there a lump or a swelling at the {side} ear, or below it?',
    why: 'A deep infection can come back, even years later. A swelling is often its first sign. If there is one, we phone you and look.',
    choices: {
      no: 'No',
      yes: 'Yes, there is one now',
      'yes-gone': 'There was one, and it is gone',
      'cannot-tell': 'I cannot tell',
    },
  },
  discharge: {
    ask: 'Does fluid or pus come out of the skin at the {side} ear, or below it?',
    why: 'Fluid from the skin can come from deep inside. If there is any, we phone you and look.',
    choices: {
      no: 'No',
      yes: 'Yes, it does now',
      'yes-gone': 'It did, and it has stopped',
      'cannot-tell': 'I cannot tell',
    },
  },
  wound: {
    ask: 'Is the skin open anywhere at the {side} ear?',
    why: 'An open wound can let germs in. If it is open, we phone you and look.',
    choices: { no: 'No', yes: 'Yes', 'cannot-tell': 'I cannot tell' },
  },
  touch: {
    ask: 'Does {name} pull away or cry when you touch the {side} ear?',
    why: 'Pain can come before there is anything to see. If it is often so, we phone you.',
    choices: { no: 'No', sometimes: 'Now and then', often: 'Yes, often', 'cannot-tell': 'I cannot tell' },
  },
  mouth: {
    ask: 'Does it hurt {name} to open the mouth wide, as in a yawn?',
    why: 'Trouble deep in the ear can hurt the jaw. You may see it first. If it hurts, we phone you and look.',
    choices: { no: 'No', yes: 'Yes', 'cannot-tell': 'I cannot tell' },
  },
  face: {
    ask: 'Does the face hang on the {side} side?',
    why: 'The nerve of the face runs close by the ear. Your answer tells us to look again. Only a look by a vet can say how the nerve is.',
    choices: { no: 'No', 'a-little': 'A little', 'a-lot': 'A lot', 'cannot-tell': 'I cannot tell' },
  },
  eye: {
    ask: 'Does the {side} eye close all the way when {name} blinks?',
    why: 'An eye that stays open dries out and gets sore. If it does not close, we phone you and look.',
    choices: { yes: 'Yes', no: 'No', 'cannot-tell': 'I cannot tell' },
  },
  'eye-sore': {
    ask: 'Is the {side} eye sore? A sore eye is red, or sticky, or held shut.',
    why: 'A sore eye cannot wait. If it is sore, we phone you and look.',
    choices: { no: 'No', yes: 'Yes', 'cannot-tell': 'I cannot tell' },
  },
  'third-lid': {
    ask: 'Does a pale skin cover part of the {side} eye?',
    why: 'A thin nerve runs through the ear of a cat. When it does not work, this skin comes up. We write it down and look when we next see {name}.',
    choices: { no: 'No', yes: 'Yes', 'cannot-tell': 'I cannot tell' },
  },
  head: {
    ask: 'Does {name} hold the head to one side?',
    why: 'The sense of balance sits deep in the ear. If this is new or worse, we phone you and look.',
    choices: {
      no: 'No',
      'yes-as-before': 'Yes, as when you last saw {name}',
      'yes-worse': 'Yes, and it is new or worse',
      'cannot-tell': 'I cannot tell',
    },
  },
  eating: {
    ask: 'Does {name} eat as before the operation?',
    why: 'Pain takes the wish to eat. If {name} eats almost nothing, we phone you and look.',
    choices: { yes: 'Yes', less: 'Less than before', no: 'No, almost nothing', 'cannot-tell': 'I cannot tell' },
  },
  medicines: {
    ask: 'Can you give all the medicines as the home page says?',
    why: 'Some days it cannot be done. If so, we phone you and find another way.',
    choices: {
      yes: 'Yes',
      no: 'No, not all of them',
      'none-left': 'There are none left to give',
      'cannot-tell': 'I cannot tell',
    },
  },
  hearing: {
    ask: 'Does {name} hear you at home?',
    why: 'We know of no count of this. Your answer helps us to tell the next owner what to expect.',
    choices: {
      'as-before': 'As before the operation',
      less: 'Less than before',
      no: 'No',
      'cannot-tell': 'I cannot tell',
    },
  },
  'treated-elsewhere': {
    ask: 'Has another clinic treated the {side} ear since the operation?',
    why: 'What others did belongs in the record of {name}. If so, we phone you and ask for their notes.',
    choices: { no: 'No', yes: 'Yes', 'cannot-tell': 'I cannot tell' },
  },
  'choose-again': {
    ask: 'If you had to choose again, would you choose this operation?',
    why: 'It shows us if our talk before the operation was honest. A “no” changes nothing in how we care for {name}.',
    choices: { yes: 'Yes', no: 'No', 'cannot-tell': 'I cannot tell' },
  },
  'phone-me': {
    ask: 'Would you like us to phone you?',
    why: 'Then one of us phones you, whatever else you marked.',
    choices: { no: 'No', yes: 'Yes, please', 'cannot-tell': 'I cannot tell yet' },
  },
  'anything-else': {
    ask: 'Is there anything else you want to tell us?',
    why: 'You see {name} every day. We read what you write and answer it.',
    choices: {},
  },
} as const
