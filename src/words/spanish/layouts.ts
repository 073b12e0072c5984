import type { SpanishWords } from './spanish-words.ts'

/** Why a layout is as it is, and why another is refused. */
export const layoutWords: SpanishWords = {
  sentences: {
    first: 'primer',
    second: 'segundo',
    'at posts': 'en los postes',
    'midway between posts': 'a media distancia entre postes',
    full: 'entera',
    half: 'mitad',
    quarter: 'cuarta parte',
    single: 'de un poste',
    'long span': 'de vano largo',
    'nested span': 'de vano con baranda doble',
    none: 'ninguno',
    'the rail that counts covers the need': 'la baranda que cuenta cubre la necesidad',
    'standing run': 'tramo existente',
  },
  patterns: [
    ['the $ end goes on from the standing splice', 'el $ extremo sigue desde el empalme existente'],
    ['$ joins the run without an adapter panel', '$: se une al tramo sin panel adaptador'],
    ['$ joins the run by a # panel', '$: se une al tramo con un panel de #'],
    [
      'the rail that counts covers the need with # to spare at its begin',
      'la baranda que cuenta cubre la necesidad y sobran # en su principio',
    ],
    [
      'the rail that counts covers the need with # at its end',
      'la baranda que cuenta cubre la necesidad y sobran # en su final',
    ],
    [
      'the rail that counts covers the need with # to spare at its begin and # at its end',
      'la baranda que cuenta cubre la necesidad y sobran # en su principio y # en su final',
    ],
    [
      "post at # left out for $, by the sheet's rule for a $ gap",
      'se omite el poste a # por $, según la regla de la ficha para un hueco $',
    ],
    [
      '$: laid out as without a curb, the run does not say whether one stands before the rail; at a curb # of rail has to be doubled',
      '$: dispuesto como sin bordillo, el tramo no dice si hay uno delante de la baranda; junto a un bordillo hay que doblar # de baranda',
    ],
    [
      '$: laid out as without a curb, the run does not say whether one stands before the rail; at a curb the sheet does not allow this gap',
      '$: dispuesto como sin bordillo, el tramo no dice si hay uno delante de la baranda; junto a un bordillo la ficha no permite este hueco',
    ],
    [
      '$: the sheet does not say that posts may be left out by its rule for a $ gap where a curb stands before the rail',
      '$: la ficha no dice que se puedan omitir postes por su regla para un hueco $ donde hay un bordillo delante de la baranda',
    ],
    ['$: the sheet lets at most # post of a run be moved', '$: la ficha deja mover a lo más # poste de un tramo'],
    ['$: the sheet lets at most # posts of a run be moved', '$: la ficha deja mover a lo más # postes de un tramo'],
    ['post # is moved along the rail', 'el poste # está movido a lo largo de la baranda'],
    ['post # is a $', 'el poste # es un $'],
    [
      '$ left out, moved or replaced; $ of other than standard length; # of rail in $',
      '$ que se omiten, mueven o cambian; $ de longitud no estándar; # de baranda en $',
    ],
    ['# post', '# poste'],
    ['# posts', '# postes'],
    ['# panel', '# panel'],
    ['# panels', '# paneles'],
    ['# piece', '# pieza'],
    ['# pieces', '# piezas'],
    ['# splice', '# empalme'],
    ['# splices', '# empalmes'],
    // Refusals.
    [
      "$: splice would fall $, and this system's splices lie $",
      '$: el empalme caería $, y los de este sistema están $',
    ],
    ['on post #', 'en el poste #'],
    ['midway between posts # and #', 'a media distancia entre los postes # y #'],
    ['$ joined by a # panel', '$ unido con un panel de #'],
    ['$ joined as it is', '$ unido como está'],
    [
      'a # panel is not one that the sheet of the $ allows before the run',
      'un panel de # no es de los que la ficha permite antes del tramo: $',
    ],
    ['post # of the $ would stand in $', 'el poste # de: $, quedaría en $'],
    [
      '$: # post from post # on cannot stand, and the sheet lets $ be left out or moved',
      '$: # poste desde el poste # no puede estar, y la ficha deja omitir o mover $',
    ],
    [
      '$: # posts from post # on cannot stand, and the sheet lets $ be left out or moved',
      '$: # postes desde el poste # no pueden estar, y la ficha deja omitir o mover $',
    ],
    ['at most # in a row', 'a lo más # seguidos'],
    [
      '$: the $ needs # special posts on each side, and they do not fit beside the end unit, another gap or posts that stand',
      '$: el hueco $ necesita # postes especiales a cada lado, y no caben junto a la unidad de extremo, otro hueco o postes que ya están',
    ],
    [
      '$: the $ needs # to the end unit, and only # is there',
      '$: el hueco $ necesita # hasta la unidad de extremo, y solo hay #',
    ],
    ['$ and $: # between the gaps, at least # needed', '$ y $: # entre los huecos, hacen falta al menos #'],
    [
      '$ spacing would fall within the $, whose posts stand as tested',
      'la separación reducida ($) caería dentro de: $, cuyos postes están como en el ensayo',
    ],
    [
      'the doubled rail that was asked for would reach into the $, whose panels hang as tested',
      'la baranda doble pedida entraría en: $, cuyos paneles están como en el ensayo',
    ],
    [
      '$: no post may be left out where $ spacing rules',
      '$: no se puede omitir ningún poste donde rige la separación reducida ($)',
    ],
    [
      'no order of panels of # fills # with every splice where it belongs',
      'ningún orden de paneles de # llena # con cada empalme en su sitio',
    ],
    [
      '$: a splice would fall on a post that is left out or moved',
      '$: un empalme caería en un poste que se omite o se mueve',
    ],
    [
      'the fixed ends lie # apart, and no lawful run has that length',
      'los extremos fijos están a # uno de otro, y ningún tramo válido tiene esa longitud',
    ],
    [
      'the fixed ends lie # apart, and no lawful run has that length (nearest: #)',
      'los extremos fijos están a # uno de otro, y ningún tramo válido tiene esa longitud (la más cercana: #)',
    ],
    [
      'the fixed ends lie # apart, and no lawful run has that length (nearest: # and #)',
      'los extremos fijos están a # uno de otro, y ningún tramo válido tiene esa longitud (las más cercanas: # y #)',
    ],
    [
      'the $ end stands # too near: the rail would not count for the whole need',
      'el $ extremo está # demasiado cerca: la baranda no contaría para toda la necesidad',
    ],
    ['panel # as hung is #, the $ has # there', 'el panel # colgado mide #; ahí corresponde uno de #4: $3'],
    [
      'panel # as hung is #, which may only be the first or the last panel of the run',
      'el panel # colgado mide #, que solo puede ser el primero o el último del tramo',
    ],
    ['panel # as hung is #, which is no panel of this system', 'el panel # colgado mide #, que no es de este sistema'],
    [
      'what hangs reaches # into the second end, or beyond it',
      'lo que ya está colgado entra # en el segundo extremo, o lo sobrepasa',
    ],
    [
      'post 1 as it stands puts the first end # away from where it is fixed',
      'el poste 1, tal como está, deja el primer extremo a # de donde está fijado',
    ],
    ['panel # as hung ends where no splice may lie', 'el panel # colgado termina donde no puede haber un empalme'],
    ['no # panel in stock', 'no hay panel de # en existencia'],
    [
      'the posts of the two ends are out of step by # of a # space',
      'los postes de los dos extremos no coinciden: falta # de un espacio de #',
    ],
    [
      '$: the # of doubled rail round the gap would reach into the $',
      '$: los # de baranda doble alrededor del hueco entrarían en: $',
    ],
  ],
}
