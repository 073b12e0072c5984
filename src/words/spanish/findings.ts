import type { SpanishWords } from './spanish-words.ts'

/** Why a verdict is what it is, what is wrong where something fails, and what to do about it. */
export const findingWords: SpanishWords = {
  sentences: {
    'on the limit': 'en el límite',
    confirmed: 'confirmado',
    'not confirmed': 'no confirmado',
    'no reading': 'sin lectura',
    'could not be seen': 'no se pudo ver',
    'the sheet states no limit': 'la ficha no da ningún límite',
    'side not stated': 'lado sin indicar',
    'side not stated: whether it lies away from traffic or toward it':
      'lado sin indicar: si está del lado opuesto al tránsito o hacia él',
    'the reading gives no length': 'la lectura no da una longitud',
    'the reading gives no choice': 'la lectura no da una opción',
    'the reading gives no confirmation': 'la lectura no da una confirmación',
    'Measure the stub first: raising the post raises it too.': 'Mida primero el muñón: al subir el poste también sube.',
    'Check first that finish grade is right.': 'Compruebe primero que la rasante terminada esté bien.',
    'Reset the post, or bring finish grade to where both hold.':
      'Vuelva a colocar el poste, o lleve la rasante terminada a donde los dos queden bien.',
    'both spaces then come right': 'los dos espacios quedan así bien',
    'Measure the rail height first: lowering the post lowers it too.':
      'Mida primero la altura de la baranda: al bajar el poste también baja.',
    'No move of these posts alone brings the spaces right: lay the run out again from the last post that is right.':
      'Ningún movimiento de estos postes por sí solos deja bien los espacios: trace de nuevo el tramo desde el último poste que esté bien.',
    'The limits leave no room for the doubt of such a reading, so it cannot be proven that way: no instrument of this run would prove it.':
      'Los límites no dejan lugar para la duda de una lectura así y por ese camino no se puede demostrar: ningún instrumento de este tramo lo demostraría.',
    'the space then comes right': 'el espacio queda así bien',
    'Every splice then lies where it belongs.': 'Así cada empalme queda en su sitio.',
  },
  patterns: [
    ['$, $; ± # (k = 2); probability of conformity $ %', '$, $; ± # (k = 2); probabilidad de conformidad $4 %'],
    [
      'computed $, $; ± # (k = 2); probability of conformity $ %',
      'calculado $, $; ± # (k = 2); probabilidad de conformidad $4 %',
    ],
    ['# away from traffic', '# del lado opuesto al tránsito'],
    ['# toward traffic', '# hacia el tránsito'],
    ['# outside the limit', '# fuera del límite'],
    ['$ outside the limit on either side', '$ fuera del límite a cualquiera de los dos lados'],
    ['# inside the limit', '# dentro del límite'],
    ['$, within the guard band', '$, dentro de la banda de guarda'],
    ['over #', 'más del #'],
    ['under #', 'menos del #'],
    [
      'corrects _, without effect: that is no earlier reading of the same thing',
      'corrige _, sin efecto: no es una lectura anterior de lo mismo',
    ],
    [
      'rechecks _, without effect: this reading cannot prove that finding put right',
      'revisa _, sin efecto: esta lectura no puede probar que ese hallazgo esté corregido',
    ],
    ['sets _ aside, without effect: that may not be set aside', 'aparta _, sin efecto: eso no se puede apartar'],
    ['set aside by $, which the sheet does not allow: $', 'apartado por $, lo que la ficha no permite: $'],
    ['set aside by $: $', 'apartado por $: $'],
    [
      'no direct reading, and these are missing to compute it: $',
      'no hay lectura directa, y para calcularla faltan: $',
    ],
    ['post-#/along', 'la posición del poste #'],
    ['post-#/lateral-offset', 'la distancia lateral del poste #'],
    ['Post # stands # out of place: $, then $.', 'El poste # está # fuera de su sitio: $; después $.'],
    ['Raise post # by #: $.', 'Suba el poste # #: $.'],
    ['Lower post # by #: $.', 'Baje el poste # #: $.'],
    ['Lower post # by #: stub at #.', 'Baje el poste # #: el muñón queda a #.'],
    ['$ (anything from $ to $ holds)', '$ (sirve todo entre $ y $)'],
    ['rail then at #', 'la baranda queda a #'],
    ['rail then at #, stub at #', 'la baranda queda a #, el muñón a #'],
    ['stub at #', 'el muñón queda a #'],
    ['up #', 'subir #'],
    ['down #', 'bajar #'],
    [
      'Or raise the block on the post by as much (up to # is customary; drill or punch the new hole, no torch).',
      'O suba el bloque en el poste lo mismo (hasta # es costumbre; taladre o punzone el agujero nuevo, sin soplete).',
    ],
    [
      'Lowering post # until the stub is at # would put the rail at #: no move of the post brings rail and stub right together.',
      'Bajar el poste # hasta que el muñón esté a # dejaría la baranda a #: ningún movimiento del poste deja bien a la vez la baranda y el muñón.',
    ],
    [
      'Lowering post # until the rail is at # would put the stub at #, over #: no move of the post brings rail and stub right together.',
      'Bajar el poste # hasta que la baranda esté a # dejaría el muñón a #, más de #: ningún movimiento del poste deja bien a la vez la baranda y el muñón.',
    ],
    [
      'Raising post # until the rail is at # would put the stub at #, over #: no move of the post brings rail and stub right together.',
      'Subir el poste # hasta que la baranda esté a # dejaría el muñón a #, más de #: ningún movimiento del poste deja bien a la vez la baranda y el muñón.',
    ],
    ['Move post # upstream by #; $.', 'Mueva el poste # # aguas arriba; $.'],
    ['Move post # downstream by #; $.', 'Mueva el poste # # aguas abajo; $.'],
    [
      'Move post # by # away from traffic, the other posts of the flare in proportion; it then stands # off the line of the run, away from traffic.',
      'Aleje el poste # # del tránsito, y los demás postes del abocinado en proporción; queda entonces a # de la línea del tramo, del lado opuesto al tránsito.',
    ],
    [
      'Move post # by # toward traffic, the other posts of the flare in proportion; it then stands # off the line of the run, away from traffic.',
      'Acerque el poste # # al tránsito, y los demás postes del abocinado en proporción; queda entonces a # de la línea del tramo, del lado opuesto al tránsito.',
    ],
    [
      'Read again on which side of the line of the run post # stands: the way in which to move it depends on it.',
      'Lea de nuevo de qué lado de la línea del tramo está el poste #: de ello depende hacia dónde moverlo.',
    ],
    ['panel #: $', 'panel #: $'],
    ['panel # (panel # of the $): $', 'panel # (panel # del $): $'],
    ['splice # out of place', 'empalme # fuera de sitio'],
    ['splices # out of place', 'empalmes # fuera de sitio'],
    ['Posts # to # stand # out of place: $, then $.', 'Los postes # a # están # fuera de su sitio: $; después $.'],
    ['Posts # to # stand # out of place: $.', 'Los postes # a # están # fuera de su sitio: $.'],
    ['Post # stands # out of place: $.', 'El poste # está # fuera de su sitio: $.'],
    ['Move posts # to # upstream by #; $.', 'Mueva los postes # a # # aguas arriba; $.'],
    ['Move posts # to # downstream by #; $.', 'Mueva los postes # a # # aguas abajo; $.'],
    ['Move post # by #, closer to post #.', 'Mueva el poste # #, hacia el poste #.'],
    ['Move post # by #, away from post #.', 'Mueva el poste # #, alejándolo del poste #.'],
    [
      'Move post # and every post beyond # closer to post #.',
      'Acerque el poste #, y cada poste más allá, # al poste #.',
    ],
    [
      'Move post # and every post beyond # away from post #.',
      'Aleje el poste #, y cada poste más allá, # del poste #.',
    ],
    [
      'Move post # and every post before it # closer to post #.',
      'Acerque el poste #, y cada poste antes de él, # al poste #.',
    ],
    [
      'Move post # and every post before it # away from post #.',
      'Aleje el poste #, y cada poste antes de él, # del poste #.',
    ],
    [
      'Move post # and every post beyond upstream by #; $.',
      'Mueva el poste #, y cada poste más allá, # aguas arriba; $.',
    ],
    [
      'Move post # and every post beyond downstream by #; $.',
      'Mueva el poste #, y cada poste más allá, # aguas abajo; $.',
    ],
    [
      'Move post # and every post before it upstream by #; $.',
      'Mueva el poste #, y cada poste antes de él, # aguas arriba; $.',
    ],
    [
      'Move post # and every post before it downstream by #; $.',
      'Mueva el poste #, y cada poste antes de él, # aguas abajo; $.',
    ],
    ['$ once post # is moved as well', '$ en cuanto se mueva también el poste #'],
    ['$ once post # and post # are moved as well', '$ en cuanto se muevan también el poste # y el poste #'],
    [
      '# of the spaces beside and beyond is unread: measure first whether every post beyond is out by the same amount.',
      '# de los espacios al lado y más allá está sin leer: mida primero si cada poste más allá está desplazado lo mismo.',
    ],
    [
      '# of the spaces beside and beyond are unread: measure first whether every post beyond is out by the same amount.',
      '# de los espacios al lado y más allá están sin leer: mida primero si cada poste más allá está desplazado lo mismo.',
    ],
    [
      'Measure panel # splice to splice: it is not of the length that the layout gives, and moves every splice beyond it.',
      'Mida de empalme a empalme el panel #: no tiene la longitud que da la disposición, y desplaza todos los empalmes que siguen.',
    ],
    [
      'Measure panels # to # splice to splice: one of them is not of the length that the layout gives, and moves every splice beyond it.',
      'Mida de empalme a empalme los paneles # a #: uno de ellos no tiene la longitud que da la disposición, y desplaza todos los empalmes que siguen.',
    ],
    [
      'Read splice # again, and the panels and spaces beside it: as those are read it lies where it belongs.',
      'Lea otra vez el empalme #, y los paneles y espacios a su lado: según esas lecturas está en su sitio.',
    ],
    ['A reading of at most # then proves it.', 'Una lectura de # como máximo lo demuestra entonces.'],
    ['A reading of at least # then proves it.', 'Una lectura de # como mínimo lo demuestra entonces.'],
    ['A reading of # to # then proves it.', 'Una lectura de # a # lo demuestra entonces.'],
    ['A reading of # then proves it.', 'Una lectura de # lo demuestra entonces.'],
    [
      'The limits leave no room for the doubt of such a reading, so it cannot be proven that way: a reading taken directly with $ would prove it.',
      'Los límites no dejan lugar para la duda de una lectura así y por ese camino no se puede demostrar: lo demostraría una lectura tomada directamente con $.',
    ],
    [
      'No move of post # brings rail and stub so far inside their limits that an instrument of this run would prove it.',
      'Ningún movimiento del poste # lleva la baranda y el muñón tan adentro de sus límites que un instrumento de este tramo lo demuestre.',
    ],
    [
      'Read it again with $ first: a reading like this one is too coarse to say how far post # has to be moved.',
      'Léalo primero otra vez con $: una lectura como esta es demasiado basta para decir cuánto hay que mover el poste #.',
    ],
    ['exchange panel # for a # panel', 'cambie el panel # por uno de #'],
    ['exchange panel # for the $, # long', 'cambie el panel # por el $, de #'],
    ['exchange panel # (#) for the $, # long', 'cambie el panel # (#) por el $, de #'],
    ['exchange panel # (#) for a # panel', 'cambie el panel # (#) por uno de #'],
  ],
}
