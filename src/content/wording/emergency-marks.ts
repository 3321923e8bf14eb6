import type { RoomCall } from '#core/theatre/room-call.ts'

/** What the stamps of an emergency and of its end are called in the record and in the operation report. */
export const emergencyMarks = {
  'emergency-on-no-pulse': 'Emergency: no pulse',
  'emergency-off-no-pulse': 'Emergency over: no pulse',
  'emergency-on-fast-wide-rhythm': 'Emergency: fast and wide on the screen',
  'emergency-off-fast-wide-rhythm': 'Emergency over: fast and wide on the screen',
  'emergency-on-slow-rhythm': 'Emergency: slow heart',
  'emergency-off-slow-rhythm': 'Emergency over: slow heart',
  'emergency-on-undo': 'Emergency: undo what was given',
  'emergency-off-undo': 'Emergency over: undo what was given',
  'emergency-on-bleeding': 'Emergency: bleeding',
  'emergency-off-bleeding': 'Emergency over: bleeding',
  'emergency-on-local-anaesthetic-toxicity': 'Emergency: local anaesthetic in the blood',
  'emergency-off-local-anaesthetic-toxicity': 'Emergency over: local anaesthetic in the blood',
  'emergency-on-airway': 'Emergency: airway',
  'emergency-off-airway': 'Emergency over: airway',
  'emergency-on-low-pressure': 'Emergency: low pressure',
  'emergency-off-low-pressure': 'Emergency over: low pressure',
} as const satisfies Record<`emergency-${'on' | 'off'}-${RoomCall}`, string>
