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
    'Measure the panel of another length splice to splice; until its length is known no exchange can be worked out.':
      'Mida de empalme a empalme el panel de otra longitud; mientras no se sepa, no se puede calcular ningún cambio.',
    'No exchange of panels brings the splices right on the posts as they stand: lay the run out again from the last post that is right.':
      'Ningún cambio de paneles deja bien los empalmes con los postes como están: trace de nuevo el tramo desde el último poste que esté bien.',
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
      'Move post # and every post beyond that is out by the same amount # closer to post #.',
      'Acerque el poste #, y cada poste más allá que esté desplazado lo mismo, # al poste #.',
    ],
    [
      'Move post # and every post beyond that is out by the same amount # away from post #.',
      'Aleje el poste #, y cada poste más allá que esté desplazado lo mismo, # del poste #.',
    ],
    [
      '# of the spaces beyond is unread: measure first whether every post beyond is out by the same amount.',
      '# de los espacios que siguen está sin leer: mida primero si cada poste más allá está desplazado lo mismo.',
    ],
    [
      '# of the spaces beyond are unread: measure first whether every post beyond is out by the same amount.',
      '# de los espacios que siguen están sin leer: mida primero si cada poste más allá está desplazado lo mismo.',
    ],
    [
      'Move post # by # away from traffic, the other posts of the flare in proportion; it then stands # off the line of the run, away from traffic.',
      'Aleje el poste # # del tránsito, y los demás postes del abocinado en proporción; queda entonces a # de la línea del tramo, del lado opuesto al tránsito.',
    ],
    [
      'Move post # by # toward traffic, the other posts of the flare in proportion; it then stands # off the line of the run, away from traffic.',
      'Acerque el poste # # al tránsito, y los demás postes del abocinado en proporción; queda entonces a # de la línea del tramo, del lado opuesto al tránsito.',
    ],
    [
      'Read again on which side of the line of the run post # stands, then move it, the other posts of the flare in proportion, so that it stands # off the line of the run, away from traffic.',
      'Lea de nuevo de qué lado de la línea del tramo está el poste #; después muévalo, y los demás postes del abocinado en proporción, hasta que quede a # de la línea del tramo, del lado opuesto al tránsito.',
    ],
    ['panel #: $', 'panel #: $'],
    ['panel # (panel # of the $): $', 'panel # (panel # del $): $'],
    ['splice # out of place', 'empalme # fuera de sitio'],
    ['splices # out of place', 'empalmes # fuera de sitio'],
    [
      'Measure panels 1 to # splice to splice: one of them is not of the length that the layout gives, and moves every splice beyond it.',
      'Mida de empalme a empalme los paneles 1 a #: uno de ellos no tiene la longitud que da la disposición, y desplaza todos los empalmes que siguen.',
    ],
    ['exchange panel # (#) for a # panel', 'cambie el panel # (#) por uno de #'],
    ['take out panel # (#)', 'quite el panel # (#)'],
    ['put in a # panel at the first end', 'ponga un panel de # en el primer extremo'],
    ['put in a # panel after panel #', 'ponga un panel de # después del panel #'],
  ],
}
