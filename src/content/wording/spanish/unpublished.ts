/** Sources that are no publication, as an owner reads them. A citation of a publication stays as it was published. */
export const unpublishedInSpanish: Readonly<Record<string, string>> = {
  'common-practice': 'Uso habitual entre cirujanos veterinarios; no se cita ninguna publicación',
  'house-judgement': 'Criterio de quienes hicieron este programa; lo debe confirmar una persona clínica',
  'standard-surgical-anatomy': 'Anatomía y técnica quirúrgica habitual del oído (sin citar un solo texto)',
}
