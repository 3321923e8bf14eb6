import type { OptionsInWords } from '#core/choice/option.ts'

/** What an owner is told about every choice, in Spanish, under the same headings. */
export const optionsInSpanish = {
  headings: {
    done: 'Qué se hace',
    good: 'Lado bueno',
    bad: 'Lado malo',
    day: 'Los días de su mascota',
    work: 'Su trabajo',
    visits: 'Visitas',
    money: 'Dinero',
    wrong: 'Qué puede salir mal',
    unknown: 'Qué no se sabe',
  },
  year: 'Cómo podría ser un año',
  options: {
    'medical-control': {
      name: 'Seguir con gotas y pastillas',
      told: {
        done: 'Siguen las gotas, las pastillas y los lavados del oído. Buscamos la causa, por ejemplo una alergia, y la tratamos también. No se quita ninguna parte del oído.',
        good: 'No hay operación. El canal del oído se queda, con todo lo que su mascota oye por él. Más tarde aún puede elegir otro camino.',
        bad: 'Muchas veces son cuidados para toda la vida. Si el canal se ha cerrado o se ha vuelto hueso, las gotas no llegan al sitio enfermo.',
        day: 'Casi todos los días hay que sujetar, limpiar o tratar el oído. En los días buenos su mascota juega y come como antes. En una mala semana el oído duele y pica.',
        work: 'Usted limpia el oído y da gotas o pastillas, a menudo cada día. Está atento al mal olor, a las sacudidas de cabeza y al dolor.',
        visits:
          'Miramos el oído una y otra vez durante el año, y vemos qué gérmenes crecen en él. Una mala semana trae más visitas.',
        money:
          'Cada visita, cada prueba y cada frasco se paga aparte. Durante el año se van sumando, y al año siguiente empiezan otra vez.',
        wrong:
          'Los gérmenes pueden acostumbrarse a las medicinas. El canal se puede cerrar. La enfermedad puede ir más adentro, al oído medio.',
        unknown:
          'Nadie puede decir cuánto tiempo se puede mantener en calma este oído. No encontramos ningún estudio que comparara una vida de gotas con una operación.',
      },
    },
    'deep-flush': {
      name: 'Un lavado profundo del oído',
      told: {
        done: 'Mientras su mascota duerme, se lava la parte honda del oído. Miramos el canal y el tímpano y tomamos muestras.',
        good: 'No hay corte y el canal se queda. Vemos hasta dónde llega la enfermedad. Las gotas pueden llegar otra vez a la piel del canal.',
        bad: 'La causa sigue ahí, y el oído se puede volver a llenar. Nada puede pasar por un canal cerrado.',
        day: 'Su mascota vuelve a casa ese día o al día siguiente, con algo de sueño. El oído puede doler unos días. Luego los días son casi como antes.',
        work: 'Usted da gotas o pastillas por unas semanas. Trae a su mascota a revisión, aunque el oído parezca estar bien.',
        visits:
          'Un día con nosotros y luego revisiones hasta que el oído esté en calma. Algunos oídos necesitan un lavado más en el año.',
        money:
          'Una cuenta por la anestesia, el lavado y las pruebas. Luego vienen las de las gotas y las revisiones. Un segundo lavado cuesta otra vez lo mismo.',
        wrong:
          'El tímpano se puede romper. El lavado, o las gotas que pasan el tímpano, pueden dañar el equilibrio, la audición o los nervios de la cara y del ojo.',
        unknown:
          'Antes del lavado no podemos decir cuánto tiempo estará en calma el oído. En nuestra lista no hay ningún estudio que lo contara.',
      },
      cat: {
        wrong:
          'El tímpano se puede romper. En un gato los nervios del equilibrio y del ojo se dañan con facilidad: cabeza de lado o pupila pequeña, por días o más tiempo.',
      },
    },
    'lateral-wall-resection': {
      name: 'Abrir de lado la parte alta del canal',
      told: {
        done: 'Se corta y se abre la pared de fuera de la parte alta del canal, para que entren el aire y las gotas. El canal hondo y el tímpano se quedan.',
        good: 'Es una operación más pequeña que quitar el canal. Su mascota sigue oyendo por este oído. El oído es más fácil de limpiar.',
        bad: 'Solo ayuda mientras el canal bajo esté abierto y sano. Lo que enfermó el oído sigue ahí.',
        day: 'Collar protector de día y de noche por unas dos semanas. Al principio la herida duele. Después su mascota tiene un oído abierto que aún necesita cuidados.',
        work: 'Usted mantiene limpia la herida y puesto el collar. Luego sigue limpiando y tratando el oído y la piel, toda la vida.',
        visits:
          'La operación, una mirada a la herida, y los puntos fuera tras unas dos semanas. Luego revisiones del oído durante el año.',
        money:
          'Una cuenta grande por la operación. Siguen cuentas más pequeñas por gotas y revisiones. Si falla, se añade una operación más grande.',
        wrong:
          'La herida se puede abrir. La entrada nueva se puede estrechar. El oído puede enfermar otra vez, y entonces hay que quitar todo el canal.',
        unknown: 'Desde fuera es difícil juzgar el canal bajo. Nadie puede prometer que seguirá abierto.',
      },
      dog: {
        bad: 'Solo ayuda mientras el canal bajo esté abierto y sano. Lo que enfermó el oído sigue ahí. En los Cocker Spaniel casi siempre falla, aunque se haga pronto.',
      },
      cat: {
        unknown:
          'Desde fuera es difícil juzgar el canal bajo. Lo que sabemos de esta operación viene de perros, y a los gatos les puede ir mejor o peor.',
      },
    },
    'vertical-canal-ablation': {
      name: 'Quitar la parte alta del canal',
      told: {
        done: 'Se quita la parte alta del canal. La parte baja se cose a la piel como una entrada nueva.',
        good: 'La parte alta enferma ya no está. El canal bajo y el tímpano se quedan, y su mascota sigue oyendo por este oído.',
        bad: 'Falla cuando también están enfermos el canal bajo o el oído medio. Si lo vemos durante la operación, conviene quitar todo el canal.',
        day: 'Collar protector de día y de noche por unas dos semanas. Al principio la herida duele. Después su mascota tiene una entrada pequeña que necesita cuidados.',
        work: 'Usted mantiene limpia la herida y puesto el collar. Luego cuida la entrada nueva y la piel, toda la vida.',
        visits:
          'La operación, una mirada a la herida, y los puntos fuera tras unas dos semanas. Luego revisiones de la entrada durante el año.',
        money:
          'Una cuenta grande por la operación. Siguen cuentas más pequeñas por cuidados y revisiones. Si falla, se añade una operación más grande.',
        wrong:
          'La herida se puede abrir. La entrada nueva se puede estrechar. El canal bajo puede enfermar otra vez. También puede quedar débil la cara.',
        unknown:
          'Muchas veces nadie puede juzgar el canal bajo antes de la operación. Por eso hablamos antes con usted de qué hacer si está enfermo.',
      },
    },
    'teca-lbo': {
      name: 'Quitar todo el canal del oído y limpiar el oído medio',
      told: {
        done: 'Se quita todo el canal. La burbuja de hueso detrás del tímpano se abre de lado y se limpia. La piel se cierra. La oreja por fuera se queda.',
        good: 'El canal enfermo ya no está, y con él se va el dolor que venía de él. Ese oído no necesita más gotas.',
        bad: 'El nervio de la cara pasa muy cerca. El ojo puede dejar de parpadear por un tiempo, o para siempre. Se oye menos. No se puede deshacer.',
        day: 'Los primeros días duelen, con medicinas contra el dolor. Collar protector por unas dos semanas. Más tarde este oído no necesita cuidados diarios.',
        work: 'Unas semanas de pastillas, collar y cuidado de la herida. Si el ojo parpadea poco, necesita gel muchas veces al día. Más tarde está usted atento al dolor, a una hinchazón o a que salga líquido.',
        visits:
          'La operación y unos días con nosotros. Los puntos fuera tras unas dos semanas. Luego miramos la cara, el ojo y la herida durante el año.',
        money:
          'Una cuenta grande, con el laboratorio. La piel y el otro oído cuestan lo que cuestan ahora. Una infección honda trae una cuenta nueva.',
        wrong:
          'Sangrado, una herida que se abre, cara débil, ojo seco, pérdida de equilibrio. Si queda algo de la piel de dentro, puede venir una infección honda, incluso años después.',
        unknown:
          'Antes de la operación nadie puede decir qué animal tendrá la cara débil, ni por cuánto tiempo. Es difícil medir cuánto se oye todavía.',
      },
      cat: {
        bad: 'En los gatos los nervios de la cara y del ojo sufren mucho más a menudo que en los perros: ojo que no parpadea, o que se ve pequeño, por semanas o para siempre. No se puede deshacer.',
      },
    },
    'subtotal-ablation': {
      name: 'Quitar casi todo el canal',
      told: {
        done: 'Se quita la parte alta del canal y un trozo de la baja. El fondo del canal, el tímpano y el oído medio se quedan.',
        good: 'Una oreja levantada suele guardar su forma. No nos acercamos a los nervios hondos.',
        bad: 'Lo que queda puede enfermar otra vez. No ayuda a un oído medio enfermo.',
        day: 'Collar protector de día y de noche por unas dos semanas. Al principio la herida duele. Más tarde la piel de la oreja aún necesita cuidados.',
        work: 'Usted mantiene limpia la herida y puesto el collar por unas semanas. Luego cuida la piel de la oreja, toda la vida.',
        visits:
          'La operación, una mirada a la herida, y los puntos fuera tras unas dos semanas. Luego revisiones de la piel y de lo que queda.',
        money:
          'Una cuenta grande por la operación. Luego cuentas más pequeñas por la piel. Si lo que queda enferma, se añade una segunda operación.',
        wrong:
          'La herida se puede abrir. La piel de la oreja puede seguir enferma. La parte que queda puede enfermar y tener que salir.',
        unknown:
          'Lo que sabemos viene de un grupo pequeño, casi todos perros. Nadie puede decir cuántos oídos siguen en calma toda la vida.',
      },
      cat: {
        unknown:
          'Lo que sabemos viene de un grupo pequeño de perros y un solo gato. De los gatos en general nadie sabe cómo les va.',
      },
    },
    'ventral-bulla-osteotomy': {
      name: 'Abrir el oído medio desde abajo',
      told: {
        done: 'La burbuja de hueso detrás del tímpano se abre por el lado de la garganta y se limpia. El canal del oído se queda.',
        good: 'El canal y la oreja se quedan como están. Se puede ver y vaciar todo el oído medio.',
        bad: 'Dentro de la burbuja hay nervios del ojo y del equilibrio, y se pueden dañar. Un canal enfermo sigue enfermo.',
        day: 'Al principio duele el lado de la garganta; la comida blanda ayuda. Si la cabeza queda de lado, hace falta tiempo y ayuda en las escaleras. Luego los días son como antes.',
        work: 'Unas semanas de reposo, pastillas y cuidado de la herida. Usted mira cómo come, respira y anda su mascota, y cómo lleva la cabeza.',
        visits:
          'La operación y unos días con nosotros. Los puntos fuera tras unas dos semanas. Luego miramos el ojo, la cara y el equilibrio.',
        money:
          'Una cuenta grande, con la imagen y el laboratorio. El cuidado de un canal enfermo sigue y cuesta lo que cuesta ahora.',
        wrong:
          'El ojo de ese lado se puede ver pequeño, la cabeza puede quedar de lado, la garganta se puede hinchar. La enfermedad puede volver al oído medio.',
        unknown:
          'Antes de la operación nadie puede decir cuánto durará la cabeza de lado o el ojo pequeño, si es que aparecen.',
      },
      cat: {
        good: 'El canal y la oreja se quedan como están. En los gatos en que se probó, la audición no fue peor después. Se puede llegar a la raíz de un pólipo.',
        wrong:
          'En los gatos el ojo muchas veces se ve pequeño, y la cabeza puede quedar de lado, por semanas o para siempre. La garganta se puede hinchar y dificultar la respiración. Un pólipo puede volver a crecer.',
      },
    },
    traction: {
      name: 'Sacar el pólipo',
      told: {
        done: 'Un pólipo es un bulto blando con un tallo. Mientras su gato duerme, se saca por el oído o por la boca.',
        good: 'Es un tratamiento corto, muchas veces sin corte. El canal y el oído medio se quedan como están.',
        bad: 'La raíz puede quedarse en el oído medio, y entonces el pólipo puede volver a crecer. No limpia un oído medio lleno.',
        day: 'Su gato vuelve a casa ese día o al día siguiente, con algo de sueño. Un ojo se puede ver pequeño unas semanas. Luego los días son como antes.',
        work: 'Usted da pastillas por un tiempo. Luego está atento a las señales de antes: ruido al respirar, sacudidas de cabeza o mal olor del oído.',
        visits:
          'Un día con nosotros y luego una o dos revisiones. Si el pólipo vuelve a crecer, hay una visita nueva y un plan nuevo.',
        money:
          'Una cuenta por la anestesia y el tratamiento, y una por el laboratorio. Si el pólipo vuelve a crecer, cuesta otra vez lo mismo, o más.',
        wrong:
          'Un poco de sangre del oído. El ojo de ese lado se puede ver pequeño, o la cabeza puede quedar de lado, por un tiempo. El pólipo puede volver a crecer.',
        unknown:
          'Nadie puede ver si la raíz salió entera. De cuánto ayudan las pastillas después se sabe por pocos gatos.',
      },
    },
    'no-treatment': {
      name: 'No tratar el oído',
      told: {
        done: 'El oído se deja como está. Sin gotas, sin lavados, sin operación. Aun así podemos tratar el dolor, y creemos que se debe hacer.',
        good: 'No hay operación ni lucha con las gotas. Puede cambiar de idea cualquier día.',
        bad: 'Un oído enfermo sigue doliendo. Los animales esconden bien ese dolor. La enfermedad puede ir más adentro y ser más difícil de tratar.',
        day: 'Su mascota vive con el oído como está ahora, o peor. Puede jugar menos, sacudir la cabeza y no dejarse tocar ahí.',
        work: 'Usted mira si la cabeza se inclina, si hay caídas, cara débil o dolor al comer. Si ve algo de esto, llámenos.',
        visits:
          'Una revisión de vez en cuando, para ver cuánto duele el oído. Si empeora, puede haber visitas que nadie tenía pensadas.',
        money:
          'Poco al principio: revisiones y medicinas contra el dolor. Si el oído empeora, el cuidado puede costar más tarde más que ahora.',
        wrong:
          'La infección puede llegar al equilibrio, a la cara, a la mandíbula y, en el peor caso, al cerebro. Puede crecer un tumor que nadie buscó.',
        unknown:
          'Nadie puede decir con qué rapidez empeorará este oído, ni cuánto duele hoy. Ningún estudio contó oídos que nadie trató.',
      },
    },
    euthanasia: {
      name: 'Eutanasia: dormir para siempre',
      told: {
        done: 'Su mascota se duerme y muere sin dolor. Lo nombramos porque es una de las opciones. No queremos presionar.',
        good: 'Acaba con un dolor que nada más puede quitar. No hay operación ni un largo tiempo de cuidados.',
        bad: 'No tiene vuelta atrás. Otro camino quizá habría dado aún un tiempo bueno, y a ese tiempo se renuncia.',
        day: 'No hay un año por venir. Hasta el día que usted elija tratamos el dolor, para que los últimos días puedan ser buenos.',
        work: 'Usted elige el día y quién está presente. Nadie tiene que decidir esto hoy. Hable con quienes en casa quieren a su mascota.',
        visits: 'Una visita, con todo el tiempo que necesite. Puede hablar con nosotros antes, y después también.',
        money:
          'Una cuenta por la visita y otra por lo que se haga con el cuerpo. Le decimos las dos antes de que decida.',
        wrong:
          'A veces es difícil encontrar una vena, y por eso a muchas mascotas se les da antes una medicina que da sueño. Tras la muerte puede haber unas respiraciones; no duelen.',
        unknown:
          'Nadie puede saber cómo habría ido con otra opción. Puede preguntarnos qué hay a favor y en contra de cada una.',
      },
    },
    'both-in-one-session': {
      name: 'Los dos oídos en un mismo día',
      told: {
        done: 'Se operan los dos oídos mientras su mascota duerme una sola vez. El segundo oído solo se empieza si el primero fue bien.',
        good: 'Hay una sola anestesia larga, una estancia con nosotros y un tiempo de curación. Los dos oídos enfermos se van a la vez.',
        bad: 'Su mascota duerme más tiempo. Los dos lados de la garganta se pueden hinchar, y los dos ojos pueden dejar de parpadear a la vez.',
        day: 'Los primeros días son más duros que con un oído: duelen los dos lados y los sonidos llegan apagados. Luego todo cura a la vez.',
        work: 'Dos heridas y quizá dos ojos necesitan cuidados a la vez, por unas semanas. Cuente con que alguien esté en casa.',
        visits:
          'Una operación y unos días con nosotros. Luego las mismas revisiones que con un oído, para los dos oídos en una visita.',
        money:
          'Una cuenta muy grande de una vez. Por lo general es menos que dos estancias, porque la anestesia y la estancia se pagan una vez.',
        wrong:
          'Si la garganta se hincha por los dos lados, puede costar respirar; puede hacer falta un tubo en la tráquea por un tiempo. Todo lo que puede salir mal con un oído puede pasar dos veces.',
        unknown:
          'Pocos estudios compararon perros de un día con perros de dos días. En mascotas de cara chata nadie los ha comparado.',
      },
      cat: {
        wrong:
          'En los gatos, abrir los dos oídos medios desde abajo en un día trajo problemas para respirar, y muerte, más a menudo que un solo lado.',
        unknown:
          'En los gatos lo que más se conoce es abrir el oído medio desde abajo. Nadie comparó cómo les va si se quitan los dos canales enteros en un día.',
      },
    },
    staged: {
      name: 'Primero un oído, el otro más tarde',
      told: {
        done: 'Primero se opera el oído que está peor. El otro sigue unas semanas después, o no se opera si se calma.',
        good: 'Cada anestesia es más corta. Un ojo y un lado de la garganta curan antes de tocar el otro lado. Usted ve cómo va el primer oído.',
        bad: 'Hay dos anestesias, dos estancias y dos tiempos de curación. El otro oído sigue doliendo hasta que le toca.',
        day: 'Un tiempo de dolor y collar, unas semanas mejores con un oído enfermo, y luego otra vez dolor y collar.',
        work: 'El cuidado de una herida llega dos veces. Entre las dos, usted sigue limpiando y tratando el oído que espera.',
        visits: 'Dos operaciones y dos estancias, con las revisiones de cada una. En todo el año son más visitas.',
        money:
          'Dos cuentas grandes con un tiempo entre ellas. Por lo general es más que una estancia para los dos oídos.',
        wrong:
          'Todo lo que puede salir mal en una anestesia larga puede pasar en cualquiera de los dos días. El oído que espera puede empeorar.',
        unknown:
          'Nadie puede decir qué espera entre los dos es la mejor. Lo que muestre el primer oído puede cambiar el plan para el segundo.',
      },
    },
  },
} as const satisfies OptionsInWords
