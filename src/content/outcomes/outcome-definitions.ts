import type { OutcomeCode, OutcomeWords } from '#core/evidence/outcome-code.ts'

/**
 * What each counted outcome means: to the trade, and to the owner.
 * `animals` follows "81 …"; `operated` follows "was followed by …".
 */
export const outcomeDefinitions = {
  facial_nerve_deficit_any: {
    meaning:
      'New or worse facial nerve weakness after surgery, of any grade and duration (blink, lip or ear carriage). Some authors did not subtract deficits that were there before.',
    animals: 'had a weak face after surgery',
    operated: 'a weak face on that side',
  },
  facial_nerve_deficit_temporary: {
    meaning: 'Facial nerve weakness that had recovered by the last follow-up of the authors.',
    animals: 'had a weak face that recovered',
    operated: 'a weak face that recovered',
  },
  facial_nerve_deficit_permanent: {
    meaning:
      'Facial nerve weakness still there at the last follow-up of the authors. The cut-off differs and is mostly not stated.',
    animals: 'had a weak face that stayed',
    operated: 'a weak face that stayed',
  },
  facial_nerve_deficit_persisting_2mo: {
    meaning: 'Facial nerve weakness still there among those examined again at about two months.',
    animals: 'still had a weak face about two months later',
    operated: 'a weak face that was still there about two months later',
  },
  horner_any: {
    meaning: "Horner's syndrome on the operated side, of any duration.",
    animals: 'had a small pupil and a drooping eyelid after surgery (Horner’s syndrome)',
    operated: 'a small pupil and a drooping eyelid on that side (Horner’s syndrome)',
  },
  horner_permanent: {
    meaning: "Horner's syndrome still there at the last follow-up of the authors.",
    animals: 'had a small pupil and a drooping eyelid that stayed (Horner’s syndrome)',
    operated: 'a small pupil and a drooping eyelid that stayed (Horner’s syndrome)',
  },
  horner_persisting_2mo: {
    meaning: "Horner's syndrome still there among those examined again at about two months.",
    animals: 'still had a small pupil and a drooping eyelid about two months later',
    operated: 'a small pupil and a drooping eyelid that were still there about two months later',
  },
  vestibular_any: {
    meaning:
      'Head tilt, eye flicker, unsteadiness, inner-ear inflammation or eighth-nerve dysfunction, of any duration.',
    animals: 'had a head tilt or poor balance after surgery',
    operated: 'a head tilt or poor balance',
  },
  vestibular_permanent: {
    meaning: 'Head tilt or other balance sign still there at the last follow-up of the authors.',
    animals: 'had a head tilt or poor balance that stayed',
    operated: 'a head tilt or poor balance that stayed',
  },
  hypoglossal: {
    meaning: 'Weakness of the tongue, mainly a risk of the approach from below.',
    animals: 'had a weak tongue after surgery',
    operated: 'a weak tongue',
  },
  neuro_complication_any: {
    meaning: 'All nerve complications together, as the authors totalled them.',
    animals: 'had some nerve problem after surgery',
    operated: 'some nerve problem',
  },
  ocular_surface_any: {
    meaning: 'Dry eye, corneal ulcer and similar trouble of the eye surface.',
    animals: 'had a dry or sore eye after surgery',
    operated: 'a dry or sore eye on that side',
  },
  corneal_ulcer: {
    meaning: 'Ulcer of the cornea.',
    animals: 'had an eye ulcer after surgery',
    operated: 'an eye ulcer on that side',
  },
  ocular_or_neuro_ophthalmic_any: {
    meaning: 'Any finding of the eye surface or of the nerves of the eye.',
    animals: 'had some eye or eyelid problem after surgery',
    operated: 'some eye or eyelid problem on that side',
  },
  haemorrhage_intraop_any: {
    meaning:
      'Bleeding during surgery that the authors listed as a complication, chiefly the retroglenoid vein. Severity not graded.',
    animals: 'bled enough during surgery for it to be noted as a problem',
    operated: 'bleeding during surgery that was noted as a problem',
    during: true,
  },
  haemorrhage_intraop_major: {
    meaning: 'Bleeding that needed a transfusion or packing and stopping, or that caused death.',
    animals: 'bled dangerously during surgery',
    operated: 'dangerous bleeding during surgery',
    during: true,
  },
  intraop_complication_any: {
    meaning: 'All complications during surgery as the authors totalled them. Only loosely comparable.',
    animals: 'had some problem during surgery',
    operated: 'some problem during surgery',
    during: true,
  },
  periop_complication_any: {
    meaning: 'All complications around surgery, in a window of the authors. Only loosely comparable.',
    animals: 'had some problem around the time of surgery',
    operated: 'some problem around the time of surgery',
    during: true,
  },
  postop_complication_any: {
    meaning: 'All complications after surgery, in a window of the authors. Only loosely comparable.',
    animals: 'had some problem after surgery, large or small',
    operated: 'some problem after surgery, large or small',
  },
  longterm_complication_any: {
    meaning: 'All late complications as the authors totalled them.',
    animals: 'had some late problem',
    operated: 'some late problem',
  },
  wound_infection_or_dehiscence: {
    meaning: 'Infection of the wound, breakdown of the wound, or both; the remark says which.',
    animals: 'had an infected or open wound',
    operated: 'an infected or open wound',
  },
  wound_minor_any: {
    meaning: 'Minor problem of the incision.',
    animals: 'had a small wound problem',
    operated: 'a small wound problem',
  },
  wound_any: {
    meaning: 'Any wound problem.',
    animals: 'had some wound problem',
    operated: 'some wound problem',
  },
  deep_recurrence: {
    meaning: 'Para-aural abscess, draining tract, fistula or renewed middle-ear infection after the canal was removed.',
    animals: 'had a deep infection come back at the ear, sometimes much later',
    operated: 'a deep infection that came back, sometimes much later',
  },
  revision_surgery: {
    meaning: 'Second operation for signs of infection.',
    animals: 'needed a second operation for infection',
    operated: 'a second operation for infection',
  },
  disease_recurrence_local: {
    meaning: 'Regrowth of the polyp or return of the original middle-ear disease.',
    animals: 'had the original disease come back in that ear',
    operated: 'the original disease coming back in that ear',
  },
  cholesteatoma_persist_or_recur: {
    meaning: 'Cholesteatoma that stayed or came back.',
    animals: 'had the skin cyst of the middle ear stay or come back',
    operated: 'the skin cyst of the middle ear staying or coming back',
  },
  tumour_local_recurrence: {
    meaning: 'Tumour growing again at the same place.',
    animals: 'had the tumour grow again at the same place',
    operated: 'the tumour growing again at the same place',
  },
  pinna_necrosis: {
    meaning: 'Loss of a part of the ear flap.',
    animals: 'lost a part of the ear flap',
    operated: 'loss of a part of the ear flap',
  },
  pinna_or_canal_dermatitis: {
    meaning: 'Skin disease of what is left of ear flap and canal.',
    animals: 'had skin disease of the ear flap or the rest of the canal',
    operated: 'skin disease of the ear flap or the rest of the canal',
  },
  ear_carriage_normal: {
    meaning: 'Ear flap carried as before.',
    animals: 'carried the ear flap as before',
    operated: 'an ear flap carried as before',
  },
  hearing_loss_perceived: {
    meaning: 'Drop in hearing noticed by the owner.',
    animals: 'heard less, as the owner noticed',
    operated: 'less hearing, as the owner noticed',
  },
  hearing_air_baer_absent: {
    meaning: 'No response in the electrical hearing test when the sound came through the air.',
    animals: 'no longer answered the hearing test through the air',
    operated: 'no answer in the hearing test through the air',
  },
  hearing_worsened_baer: {
    meaning: 'Electrical hearing test worse than before surgery.',
    animals: 'had a worse hearing test than before',
    operated: 'a worse hearing test than before',
  },
  respiratory_complication: {
    meaning: 'Upper-airway or other breathing trouble around surgery.',
    animals: 'had trouble breathing around the time of surgery',
    operated: 'trouble breathing around the time of surgery',
    during: true,
  },
  perioperative_death: {
    meaning: 'Death or euthanasia around surgery that was attributed to it.',
    animals: 'died around the time of surgery because of it',
    operated: 'death around the time of surgery because of it',
    during: true,
  },
  owner_satisfied: {
    meaning: 'Owner satisfied, or would choose the operation again.',
    animals: 'had an owner who would choose it again',
    operated: 'an owner who would choose it again',
  },
  resolution_or_improved: {
    meaning: 'Original ear problem gone or clearly better, by the scale of the authors.',
    animals: 'had the ear problem solved or made clearly better',
    operated: 'a cure of the ear problem or a clear improvement',
  },
  disease_free_6mo: {
    meaning: 'Alive and without the disease at six months.',
    animals: 'lived without the disease for six months',
    operated: 'life without the disease six months later',
  },
  culture_positive_bulla: {
    meaning: 'Growth from the bulla in the sample taken during surgery.',
    animals: 'had bacteria grow from the middle ear',
    operated: 'bacteria growing from the middle ear',
    during: true,
  },
} as const satisfies Record<OutcomeCode, OutcomeWords>
