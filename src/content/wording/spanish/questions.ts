/** Every question to owners in Spanish. Nothing that would need the sex of the animal or of the owner. */
export const questionsInSpanish = {
  'ear-now': {
    ask: '¿Cómo está ahora el oído {side}? Piense en cómo estaba antes de la operación.',
    why: 'Usted vive con {name} y conoce los días malos. Nos ayuda a decir a otra familia qué puede esperar.',
    choices: {
      'no-trouble': 'Ya no da problemas',
      better: 'Mejor que antes',
      same: 'Igual que antes',
      worse: 'Peor que antes',
      'cannot-tell': 'No lo sé',
    },
  },
  swelling: {
    ask: '¿Hay un bulto o una hinchazón en el oído {side}, o debajo?',
    why: 'Una infección profunda puede volver, aun años después. Un bulto suele ser lo primero que se ve. Si lo hay, le llamamos y lo miramos.',
    choices: {
      no: 'No',
      yes: 'Sí, ahora lo hay',
      'yes-gone': 'Lo hubo y ya no está',
      'cannot-tell': 'No lo sé',
    },
  },
  discharge: {
    ask: '¿Sale líquido o pus de la piel en el oído {side}, o debajo?',
    why: 'El líquido de la piel puede venir de muy dentro. Si lo hay, le llamamos y lo miramos.',
    choices: {
      no: 'No',
      yes: 'Sí, ahora sale',
      'yes-gone': 'Salió y ya no sale',
      'cannot-tell': 'No lo sé',
    },
  },
  wound: {
    ask: '¿Está abierta la piel en algún punto del oído {side}?',
    why: 'Por una herida abierta entran gérmenes. Si está abierta, le llamamos y la miramos.',
    choices: { no: 'No', yes: 'Sí', 'cannot-tell': 'No lo sé' },
  },
  touch: {
    ask: '¿Se aparta o se queja {name} cuando le toca el oído {side}?',
    why: 'El dolor puede llegar antes de que se vea algo. Si pasa a menudo, le llamamos.',
    choices: { no: 'No', sometimes: 'De vez en cuando', often: 'Sí, a menudo', 'cannot-tell': 'No lo sé' },
  },
  mouth: {
    ask: '¿Le duele a {name} abrir mucho la boca, como al bostezar?',
    why: 'Un mal muy dentro del oído puede hacer que duela la boca. Quizá usted lo vea primero. Si le duele, le llamamos y lo miramos.',
    choices: { no: 'No', yes: 'Sí', 'cannot-tell': 'No lo sé' },
  },
  face: {
    ask: '¿Le cuelga la cara en el lado {side}?',
    why: 'El nervio de la cara pasa junto al oído. Su respuesta nos dice si hay que mirar otra vez. Cómo está el nervio solo se sabe cuando lo mira un veterinario.',
    choices: { no: 'No', 'a-little': 'Un poco', 'a-lot': 'Mucho', 'cannot-tell': 'No lo sé' },
  },
  eye: {
    ask: '¿Se cierra del todo el ojo {side} cuando {name} parpadea?',
    why: 'Un ojo que no se cierra se seca y duele. Si no se cierra, le llamamos y lo miramos.',
    choices: { yes: 'Sí', no: 'No', 'cannot-tell': 'No lo sé' },
  },
  'eye-sore': {
    ask: '¿Está mal el ojo {side}? Un ojo que está mal está rojo, pegado o cerrado.',
    why: 'Un ojo que está mal no puede esperar. Si es así, le llamamos y lo miramos.',
    choices: { no: 'No', yes: 'Sí', 'cannot-tell': 'No lo sé' },
  },
  'third-lid': {
    ask: '¿Tapa una piel pálida parte del ojo {side}?',
    why: 'Por el oído de un gato pasa un nervio fino. Si no va bien, sube esa piel. Lo anotamos y lo miramos la próxima vez que veamos a {name}.',
    choices: { no: 'No', yes: 'Sí', 'cannot-tell': 'No lo sé' },
  },
  head: {
    ask: '¿Lleva {name} la cabeza hacia un lado?',
    why: 'Muy dentro del oído está lo que da el equilibrio. Si esto es nuevo o va a peor, le llamamos y lo miramos.',
    choices: {
      no: 'No',
      'yes-as-before': 'Sí, como la última vez que vieron a {name}',
      'yes-worse': 'Sí, y es nuevo o va a peor',
      'cannot-tell': 'No lo sé',
    },
  },
  eating: {
    ask: '¿Come {name} como antes de la operación?',
    why: 'El dolor quita las ganas de comer. Si {name} no come casi nada, le llamamos y lo miramos.',
    choices: { yes: 'Sí', less: 'Menos que antes', no: 'No, casi nada', 'cannot-tell': 'No lo sé' },
  },
  medicines: {
    ask: '¿Puede dar todas las medicinas como dice la hoja de casa?',
    why: 'Hay días en que no se puede. Si es así, le llamamos y buscamos otro modo.',
    choices: {
      yes: 'Sí',
      no: 'No, no todas',
      'none-left': 'Ya no queda ninguna que dar',
      'cannot-tell': 'No lo sé',
    },
  },
  hearing: {
    ask: '¿Le oye {name} en casa?',
    why: 'No sabemos de nadie que lo haya contado. Su respuesta nos ayuda a decir a otra familia qué puede esperar.',
    choices: {
      'as-before': 'Como antes de la operación',
      less: 'Menos que antes',
      no: 'No me oye',
      'cannot-tell': 'No lo sé',
    },
  },
  'treated-elsewhere': {
    ask: '¿Ha tratado otra clínica el oído {side} después de la operación?',
    why: 'Lo que otros hicieron es parte de la historia de {name}. Si es así, le llamamos y pedimos sus notas.',
    choices: { no: 'No', yes: 'Sí', 'cannot-tell': 'No lo sé' },
  },
  'choose-again': {
    ask: 'Si tuviera que elegir otra vez, ¿elegiría esta operación?',
    why: 'Nos dice si fuimos claros antes de operar. Un «no» no cambia en nada cómo cuidamos a {name}.',
    choices: { yes: 'Sí', no: 'No', 'cannot-tell': 'No lo sé' },
  },
  'phone-me': {
    ask: '¿Quiere que le llamemos?',
    why: 'Así le llama uno de nosotros, marque lo que marque en lo demás.',
    choices: { no: 'No', yes: 'Sí, por favor', 'cannot-tell': 'Aún no lo sé' },
  },
  'anything-else': {
    ask: '¿Hay algo más que quiera decirnos?',
    why: 'Usted ve a {name} todos los días. Leemos lo que escribe y le contestamos.',
    choices: {},
  },
} as const
