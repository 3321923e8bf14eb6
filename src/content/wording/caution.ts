/** The one quiet line under everything that states a dose, a category or a risk. */
export const caution =
  'Decision support for licensed veterinary professionals; the label of the product in hand, local law and clinical judgement come first.'
