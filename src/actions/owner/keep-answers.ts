import { changedByOwner } from '#content/wording/app-questions.ts'
import type { AnswerLine } from '#core/questionnaire/answer-line.ts'
import type { OwnerAnswers } from '#documents/questions/read-form.ts'
import type { World } from '../action.ts'
import { keepOwners } from './keep-owners.ts'
import type { OpenedLink } from './open-owner-link.ts'

/**
 * Keeps what an owner answered through the link. Answers that stood before are corrected by it and stay on record; sent
 * twice under one id it is kept once. Returns false when it could not be kept.
 */
export async function keepAnswers(
  opened: OpenedLink,
  sent: { readonly id: string; readonly body: OwnerAnswers; readonly standing: AnswerLine | null },
  world: Pick<World, 'store'>,
): Promise<boolean> {
  const { id, body, standing } = sent
  const corrects = standing === null ? null : { entry: standing.header.id, reason: changedByOwner }
  return await keepOwners(opened, { id, kind: 'owner-answer', body, corrects }, world)
}
