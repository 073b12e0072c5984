import type { DeviceMessages } from './en.ts'

/** The same in Spanish. */
export const es: DeviceMessages = {
  files: { run: 'tramo guardado', readings: 'lecturas guardadas' },
  trouble: {
    unreachable: 'El servidor no respondió. Lo que registró queda en este dispositivo y se enviará después.',
    neverSynced: 'Este dispositivo todavía no ha recibido nada, y el servidor no respondió.',
    answered: (status) => `El servidor respondió con el estado ${status}.`,
    notLetIn:
      'El servidor todavía no da entrada a este dispositivo, o le cerró el paso. Lo registrado se conserva en este dispositivo.',
    plainLine:
      'Esta dirección no está cifrada: la página solo muestra lo que tiene el servidor, no guarda nada sin red y no admite registros. Abra la dirección que empieza por https; quien lleva el servidor sabe cómo (npm start -- --lan).',
    plainCopy:
      'Esta dirección no está cifrada: el navegador no guarda nada de esta página, y no admite registros. Quien la publica puede servirla en una dirección que empiece por https.',
    mereTab:
      'Esta es una pestaña del navegador. En este dispositivo la página de la pantalla de inicio guarda sus datos aparte: ponga primero Lapwise en la pantalla de inicio y registre ahí las lecturas. Lo que se registra aquí se queda aquí.',
    runUnreadable: 'Esta página no puede leer un tramo que se guarda aquí.',
    readingsUnreadable: 'Esta página no puede leer lecturas que se guardan aquí.',
    newerFile: (file, version) =>
      `${file} lo hizo un programa más nuevo, en la versión ${version} de su formato. Se guarda en este dispositivo: traiga una página más nueva donde haya red y pruebe otra vez.`,
    notHeld: 'Ese archivo ya no se guarda en este dispositivo.',
    noSuchRun: (id) => `No hay ningún tramo ${id}.`,
    noRoom: 'No queda espacio en este dispositivo. Lo guardado antes se conserva.',
    noRoomForPhoto:
      'No queda espacio en este dispositivo para la foto. Sus lecturas se conservan; libere espacio y tómela de nuevo.',
    store: (reason) => `No se puede usar el almacén de este dispositivo: ${reason}. Lo guardado antes sigue ahí.`,
    gone: 'Lo que este dispositivo guardaba fue borrado mientras la página estaba abierta, por el navegador o por alguien: esto no se ha guardado. Lo que llegó al servidor sigue allí. Anote lo que acaba de introducir, vuelva a cargar la página e introdúzcalo otra vez.',
    madeByServer: 'Los documentos los hace el servidor, que no respondió. Se pueden hacer después; no se pierde nada.',
    notSet: (reason) => `No se pudo componer el documento: ${reason}`,
    needsSending: 'Algunos registros de este tramo aún no llegaron al servidor; faltarían en los documentos.',
    notDeviceFile: (file) => `${file} no es un archivo de dispositivo que se pueda usar.`,
    notRunFile: (file) => `${file} no es un archivo de tramo que se pueda usar.`,
    notSheetFile: (file) => `${file} no es una ficha de herrajes que se pueda usar.`,
    editionTaken: (id, version) =>
      `La edición ${version} de la ficha ${id} ya está en el estante y dice otra cosa. Una ficha cambiada necesita una versión propia.`,
    cannotLayOut: (file) => `El tramo de ${file} no se puede disponer.`,
    otherVersion: 'Entretanto llegó otra versión de este tramo. Abra la edición de nuevo: entonces parte de ella.',
    noVersion: 'Esto no es una versión del tramo que se pueda guardar.',
    part: 'Una parte de esta página aún no está en el dispositivo y no se pudo traer.',
    left: 'Se salió de la página antes de que esto terminara. Inténtelo de nuevo.',
  },
  status: {
    label: 'Este dispositivo',
    saved: 'Todo está en el servidor',
    unsent: (n, since) =>
      `${n === 1 ? '1 registro está' : `${n} registros están`} solo en este dispositivo, desde ${since}`,
    onlyHere: (n, since) => `${n === 1 ? '1 registro' : `${n} registros`} solo aquí desde ${since}`,
    photosOnlyHere: (n) => `${n === 1 ? '1 foto' : `${n} fotos`} solo aquí`,
    photos: (n) => (n === 1 ? '1 foto está solo en este dispositivo' : `${n} fotos están solo en este dispositivo`),
    refused: (n) => (n === 1 ? 'El servidor rechazó 1 registro' : `El servidor rechazó ${n} registros`),
    refusedOne: (kind, reason) => `${kind}: ${reason}`,
    moved: '¿El servidor tiene ahora otra dirección? Lleve esto allí',
    syncing: 'Enviando y recibiendo …',
    letIn: 'Dar entrada a este dispositivo',
    sync: 'Enviar y recibir ahora',
    last: (time) => `Último envío y recepción: ${time}`,
    never: 'Aún no se ha enviado ni recibido nada',
    persisted: 'El navegador prometió conservar lo que hay aquí.',
    notPersisted: 'El navegador puede borrar lo que hay aquí si le falta espacio: envíe pronto.',
    room: (used, quota) => `${used} de ${quota} en uso`,
    free: (photos, size) =>
      `Liberar espacio: ${photos === 1 ? '1 foto' : `${photos} fotos`}, ${size}, ya en el servidor`,
    freed: (photos, size) =>
      `${photos === 1 ? '1 foto' : `${photos} fotos`}, ${size}: ahora solo en el servidor; se traen cuando se muestran.`,
    noServer:
      'Esta copia no tiene servidor: lo que se registra queda en este dispositivo hasta que se entregue un archivo.',
    kept: (n, photos) =>
      `${n === 1 ? '1 registro' : `${n} registros`} y ${photos === 1 ? '1 foto' : `${photos} fotos`} guardados aquí`,
    saveSoon: 'El navegador puede borrar lo que hay aquí si le falta espacio: guarde pronto un archivo.',
    restOf: (file) => `resto-de-${file}`,
    more: 'Más sobre este dispositivo',
  },
  update: {
    ready: 'Hay una versión nueva lista.',
    take: 'Usarla ahora',
    held: 'Hay una versión nueva lista. Espera a que lo escrito se guarde, aquí y en otras pestañas.',
    tookOver: 'Otra pestaña pasó a una versión nueva. Esta la sigue en cuanto se guarde lo escrito.',
  },
}
