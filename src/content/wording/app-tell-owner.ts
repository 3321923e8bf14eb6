import type { RoomCall } from '#core/theatre/room-call.ts'

/** Telling the owner what happened in theatre, in English. The draft uses plain words and no figure of a dose. */
export const tellOwnerInEnglish = {
  title: 'Tell the owner',
  open: 'Tell the owner what happened',
  lead: 'The same day, plainly, by somebody who was there. The text is drafted from the entries; change it to what you say.',
  nothing: 'No emergency was called in this operation.',
  who: 'Who is told?',
  whoMissing: 'Choose who was told.',
  how: 'How',
  text: 'What is said',
  told: 'Told now',
  nobody: 'Nobody reached: write the try',
  toldAt: 'Told {at}, by {who}.',
  again: 'Tell again',
  mayNot: 'Your role may only read.',
  draft: {
    began: 'During the operation of {name} ({side} ear) something happened that you should hear from us.',
    calls: {
      'no-pulse': 'At {at} the heart stopped beating properly and we began resuscitation.',
      'fast-wide-rhythm': 'At {at} the heart raced in an abnormal rhythm and we treated it.',
      'slow-rhythm': 'At {at} the heart became too slow and we treated it.',
      undo: 'At {at} we reversed medicines that had been given.',
      bleeding: 'At {at} a vessel bled more than usual and we worked to stop it.',
      'local-anaesthetic-toxicity':
        'At {at} we suspected that too much local anaesthetic was in the blood and treated it.',
      airway: 'At {at} the breathing was in danger and we secured the airway.',
      'low-pressure': 'At {at} the blood pressure was too low and we treated it.',
    } satisfies Record<RoomCall, string>,
    over: 'It was over after {minutes} minutes.',
    lasts: 'It is not over yet.',
    now: 'How {name} is now: ',
    ask: 'What would you like to ask?',
  },
} as const
