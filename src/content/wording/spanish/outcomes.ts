import type { OutcomeCode, OwnerOutcomeWords } from '#core/evidence/outcome-code.ts'

/** What each counted outcome means to the owner, in Spanish: nouns, which follow "there was". */
export const outcomesInSpanish = {
  facial_nerve_deficit_any: {
    animals: 'cara débil después de la cirugía',
    operated: 'cara débil de ese lado',
  },
  facial_nerve_deficit_temporary: { animals: 'cara débil que se recuperó', operated: 'cara débil que se recuperó' },
  facial_nerve_deficit_permanent: { animals: 'cara débil que no se fue', operated: 'cara débil que no se fue' },
  facial_nerve_deficit_persisting_2mo: {
    animals: 'cara aún débil unos dos meses después',
    operated: 'cara aún débil unos dos meses después',
  },
  horner_any: {
    animals: 'pupila pequeña y párpado caído después de la cirugía (síndrome de Horner)',
    operated: 'pupila pequeña y párpado caído de ese lado (síndrome de Horner)',
  },
  horner_permanent: {
    animals: 'pupila pequeña y párpado caído que no se fueron (síndrome de Horner)',
    operated: 'pupila pequeña y párpado caído que no se fueron (síndrome de Horner)',
  },
  horner_persisting_2mo: {
    animals: 'pupila pequeña y párpado caído aún unos dos meses después',
    operated: 'pupila pequeña y párpado caído aún unos dos meses después',
  },
  vestibular_any: {
    animals: 'cabeza de lado o mal equilibrio después de la cirugía',
    operated: 'cabeza de lado o mal equilibrio',
  },
  vestibular_permanent: {
    animals: 'cabeza de lado o mal equilibrio que no se fue',
    operated: 'cabeza de lado o mal equilibrio que no se fue',
  },
  hypoglossal: { animals: 'lengua débil después de la cirugía', operated: 'lengua débil' },
  neuro_complication_any: {
    animals: 'algún problema de los nervios después de la cirugía',
    operated: 'algún problema de los nervios',
  },
  ocular_surface_any: {
    animals: 'ojo seco o irritado después de la cirugía',
    operated: 'ojo seco o irritado de ese lado',
  },
  corneal_ulcer: { animals: 'úlcera del ojo después de la cirugía', operated: 'úlcera del ojo de ese lado' },
  ocular_or_neuro_ophthalmic_any: {
    animals: 'algún problema del ojo o del párpado después de la cirugía',
    operated: 'algún problema del ojo o del párpado de ese lado',
  },
  haemorrhage_intraop_any: {
    animals: 'un sangrado en la cirugía que se anotó como problema',
    operated: 'un sangrado en la cirugía que se anotó como problema',
    during: true,
  },
  haemorrhage_intraop_major: {
    animals: 'un sangrado peligroso en la cirugía',
    operated: 'un sangrado peligroso en la cirugía',
    during: true,
  },
  intraop_complication_any: {
    animals: 'algún problema durante la cirugía',
    operated: 'algún problema durante la cirugía',
    during: true,
  },
  periop_complication_any: {
    animals: 'algún problema en los días de la cirugía',
    operated: 'algún problema en los días de la cirugía',
    during: true,
  },
  postop_complication_any: {
    animals: 'algún problema después de la cirugía, grande o pequeño',
    operated: 'algún problema después de la cirugía, grande o pequeño',
  },
  longterm_complication_any: { animals: 'algún problema tardío', operated: 'algún problema tardío' },
  wound_infection_or_dehiscence: {
    animals: 'una herida infectada o abierta',
    operated: 'una herida infectada o abierta',
  },
  wound_minor_any: {
    animals: 'un problema pequeño de la herida',
    operated: 'un problema pequeño de la herida',
  },
  wound_any: { animals: 'algún problema de la herida', operated: 'algún problema de la herida' },
  deep_recurrence: {
    animals: 'una infección honda que volvió al oído, a veces mucho después',
    operated: 'una infección honda que volvió, a veces mucho después',
  },
  revision_surgery: {
    animals: 'una segunda operación por una infección',
    operated: 'una segunda operación por una infección',
  },
  disease_recurrence_local: {
    animals: 'la misma enfermedad otra vez en ese oído',
    operated: 'la misma enfermedad otra vez en ese oído',
  },
  cholesteatoma_persist_or_recur: {
    animals: 'un quiste de piel del oído medio que se quedó o volvió',
    operated: 'un quiste de piel del oído medio que se quedó o volvió',
  },
  tumour_local_recurrence: {
    animals: 'un tumor que creció de nuevo en el mismo sitio',
    operated: 'un tumor que creció de nuevo en el mismo sitio',
  },
  pinna_necrosis: { animals: 'pérdida de una parte de la oreja', operated: 'pérdida de una parte de la oreja' },
  pinna_or_canal_dermatitis: {
    animals: 'enfermedad de la piel de la oreja o del resto del canal',
    operated: 'enfermedad de la piel de la oreja o del resto del canal',
  },
  ear_carriage_normal: {
    animals: 'una oreja que se mantiene como antes',
    operated: 'una oreja que se mantiene como antes',
  },
  hearing_loss_perceived: {
    animals: 'menos audición, según notó el dueño',
    operated: 'menos audición, según notó el dueño',
  },
  hearing_air_baer_absent: {
    animals: 'ninguna respuesta en la prueba de audición por el aire',
    operated: 'ninguna respuesta en la prueba de audición por el aire',
  },
  hearing_worsened_baer: {
    animals: 'una prueba de audición peor que antes',
    operated: 'una prueba de audición peor que antes',
  },
  respiratory_complication: {
    animals: 'problemas para respirar en los días de la cirugía',
    operated: 'problemas para respirar en los días de la cirugía',
    during: true,
  },
  perioperative_death: {
    animals: 'muerte en los días de la cirugía a causa de ella',
    operated: 'muerte en los días de la cirugía a causa de ella',
    during: true,
  },
  owner_satisfied: {
    animals: 'un dueño que lo volvería a elegir',
    operated: 'un dueño que lo volvería a elegir',
  },
  resolution_or_improved: {
    animals: 'el problema del oído curado o mucho mejor',
    operated: 'el problema del oído curado o mucho mejor',
  },
  disease_free_6mo: {
    animals: 'vida sin la enfermedad durante seis meses',
    operated: 'vida sin la enfermedad seis meses después',
  },
  culture_positive_bulla: {
    animals: 'bacterias en la muestra del oído medio',
    operated: 'bacterias en la muestra del oído medio',
    during: true,
  },
} as const satisfies Record<OutcomeCode, OwnerOutcomeWords>
