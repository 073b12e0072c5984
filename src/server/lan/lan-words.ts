import type { PlainLanguage } from './plain-page.ts'

interface LetInWords {
  readonly title: string
  readonly why: string
  readonly installFirst: string
  readonly code: string
  readonly device: string
  readonly send: string
  readonly done: string
  readonly away: string
  readonly wrong: string
  readonly wait: string
  readonly moved: string
}

export const letInWords: Readonly<Record<PlainLanguage, LetInWords>> = {
  en: {
    title: 'Let this device in',
    why: 'The computer on which Lapwise runs shows a code. Each code lets one device in, once.',
    installFirst:
      'On this device a page in the browser and the app on the home screen keep their readings apart. Put Lapwise on the home screen first (Share, then Add to Home Screen), open it there, and give the code there.',
    code: 'Code',
    device: 'Name of this device, so that it can be shut out if it is lost',
    send: 'Let in',
    done: 'This device is let in.',
    away: 'The server does not answer.',
    wrong: 'This is not the code that the server shows now.',
    wait: 'Too many wrong codes. Wait a minute, then try again.',
    moved:
      'Did this device work at another address of this server before? Once it is let in, bring over what it holds there',
  },
  es: {
    title: 'Dar entrada a este dispositivo',
    why: 'El equipo en el que corre Lapwise muestra un código. Cada código da entrada a un solo dispositivo, una vez.',
    installFirst:
      'En este dispositivo una página del navegador y la aplicación de la pantalla de inicio guardan sus lecturas por separado. Ponga primero Lapwise en la pantalla de inicio (Compartir, después Añadir a pantalla de inicio), ábralo ahí y dé ahí el código.',
    code: 'Código',
    device: 'Nombre de este dispositivo, para poder cerrarle el paso si se pierde',
    send: 'Dar entrada',
    done: 'Este dispositivo ya tiene entrada.',
    away: 'El servidor no responde.',
    wrong: 'Este no es el código que el servidor muestra ahora.',
    wait: 'Demasiados códigos equivocados. Espere un minuto y pruebe otra vez.',
    moved:
      '¿Trabajaba este dispositivo antes en otra dirección de este servidor? Cuando tenga entrada, traiga lo que guarda allí',
  },
}

/** The systems of devices whose steps differ. */
export type System = 'apple phone' | 'android' | 'windows' | 'mac' | 'linux'

/** A step with the picture that goes with it. */
export interface Step {
  readonly picture: 'fetch' | 'settings' | 'switch' | 'open' | 'home'
  readonly text: string
}

interface TrustWords {
  readonly title: string
  readonly why: string
  readonly checking: string
  readonly reached: (address: string) => string
  readonly notFetched: string
  readonly notTrusted: string
  readonly fetchFile: string
  readonly fetchProfile: string
  readonly compare: string
  readonly again: string
  readonly systems: Readonly<Record<System, string>>
  readonly steps: Readonly<Record<System, readonly Step[]>>
  readonly caution: string
  readonly moved: string
}

export const trustWords: Readonly<Record<PlainLanguage, TrustWords>> = {
  en: {
    title: 'Make this device trust the Lapwise server',
    why: 'Lapwise keeps working without a network only on an encrypted address, and this device has to trust who signed it: an authority that the server made for itself. It can vouch for addresses of local networks only.',
    checking: 'Checking what is still missing …',
    reached: (address) => `Nothing is missing: this device trusts the server. Open ${address}`,
    notFetched: 'Missing: step 1. The file of the authority was not fetched by this browser yet.',
    notTrusted:
      'Missing: one of the steps after the first. The file was fetched, but this device does not trust the authority yet.',
    fetchFile: 'Fetch the authority file',
    fetchProfile: 'Fetch the profile',
    compare: 'Before you trust it, compare its fingerprint with the one that the server shows on its console:',
    again: 'Check again',
    systems: { 'apple phone': 'iPhone, iPad', android: 'Android', windows: 'Windows', mac: 'Mac', linux: 'Linux' },
    steps: {
      'apple phone': [
        { picture: 'fetch', text: 'Fetch the profile with the button above and allow it.' },
        {
          picture: 'settings',
          text: 'Settings, General, VPN & Device Management: open the downloaded profile and install it.',
        },
        {
          picture: 'switch',
          text: 'Settings, General, About, Certificate Trust Settings: turn the switch of the authority on. Without this step nothing is trusted.',
        },
        { picture: 'open', text: 'Come back to this page and check again, then open the encrypted address.' },
        {
          picture: 'home',
          text: 'Share, Add to Home Screen. Open Lapwise there, and only there: the browser tab keeps its readings apart.',
        },
      ],
      android: [
        { picture: 'fetch', text: 'Fetch the authority file with the button above.' },
        {
          picture: 'settings',
          text: 'Settings, search for “CA certificate”, install from storage, and choose the file. A browser with a store of its own (it has an entry for certificates in its settings) needs it there as well.',
        },
        { picture: 'open', text: 'Come back to this page and check again, then open the encrypted address.' },
        { picture: 'home', text: 'In the menu of the browser: install the app, or add it to the home screen.' },
      ],
      windows: [
        { picture: 'fetch', text: 'Fetch the authority file with the button above.' },
        {
          picture: 'settings',
          text: 'Open the file, install it for the current user, into the store of trusted root authorities.',
        },
        { picture: 'open', text: 'Start the browser anew, come back to this page and check again.' },
      ],
      mac: [
        { picture: 'fetch', text: 'Fetch the authority file with the button above.' },
        { picture: 'settings', text: 'Open the file, so that it is added to the login keychain.' },
        { picture: 'switch', text: 'Open it in the keychain, and under Trust choose to trust it always.' },
        { picture: 'open', text: 'Come back to this page and check again.' },
      ],
      linux: [
        { picture: 'fetch', text: 'Fetch the authority file with the button above.' },
        {
          picture: 'settings',
          text: 'In the settings of the browser, under certificates, authorities: import the file and trust it for web sites.',
        },
        { picture: 'open', text: 'Come back to this page and check again.' },
      ],
    },
    caution: 'Do this only on the network of your own depot, with the console of the server before you.',
    moved:
      'The authority of this server came to its end and there is a new one: devices that trusted the old one go through the steps again. What is on them stays on them.',
  },
  es: {
    title: 'Que este dispositivo confíe en el servidor de Lapwise',
    why: 'Lapwise sigue funcionando sin red solo en una dirección cifrada, y este dispositivo tiene que confiar en quien la firmó: una autoridad que el servidor se hizo a sí mismo. Solo puede responder por direcciones de redes locales.',
    checking: 'Comprobando qué falta …',
    reached: (address) => `No falta nada: este dispositivo confía en el servidor. Abra ${address}`,
    notFetched: 'Falta: el paso 1. Este navegador todavía no ha traído el archivo de la autoridad.',
    notTrusted:
      'Falta: uno de los pasos después del primero. El archivo ya se trajo, pero este dispositivo todavía no confía en la autoridad.',
    fetchFile: 'Traer el archivo de la autoridad',
    fetchProfile: 'Traer el perfil',
    compare: 'Antes de confiar, compare su huella con la que el servidor muestra en su consola:',
    again: 'Comprobar otra vez',
    systems: { 'apple phone': 'iPhone, iPad', android: 'Android', windows: 'Windows', mac: 'Mac', linux: 'Linux' },
    steps: {
      'apple phone': [
        { picture: 'fetch', text: 'Traiga el perfil con el botón de arriba y permítalo.' },
        {
          picture: 'settings',
          text: 'Ajustes, General, VPN y gestión de dispositivos: abra el perfil descargado e instálelo.',
        },
        {
          picture: 'switch',
          text: 'Ajustes, General, Información, Ajustes de confianza de certificados: active el interruptor de la autoridad. Sin este paso no se confía en nada.',
        },
        { picture: 'open', text: 'Vuelva a esta página y compruebe otra vez; después abra la dirección cifrada.' },
        {
          picture: 'home',
          text: 'Compartir, Añadir a pantalla de inicio. Abra Lapwise ahí, y solo ahí: la pestaña del navegador guarda sus lecturas por separado.',
        },
      ],
      android: [
        { picture: 'fetch', text: 'Traiga el archivo de la autoridad con el botón de arriba.' },
        {
          picture: 'settings',
          text: 'Ajustes, busque «certificado CA», instale desde el almacenamiento y elija el archivo. Un navegador con almacén propio (tiene una entrada de certificados en sus ajustes) lo necesita también ahí.',
        },
        { picture: 'open', text: 'Vuelva a esta página y compruebe otra vez; después abra la dirección cifrada.' },
        {
          picture: 'home',
          text: 'En el menú del navegador: instale la aplicación, o añádala a la pantalla de inicio.',
        },
      ],
      windows: [
        { picture: 'fetch', text: 'Traiga el archivo de la autoridad con el botón de arriba.' },
        {
          picture: 'settings',
          text: 'Abra el archivo e instálelo para el usuario actual, en el almacén de autoridades raíz de confianza.',
        },
        { picture: 'open', text: 'Inicie de nuevo el navegador, vuelva a esta página y compruebe otra vez.' },
      ],
      mac: [
        { picture: 'fetch', text: 'Traiga el archivo de la autoridad con el botón de arriba.' },
        { picture: 'settings', text: 'Abra el archivo, para que se añada al llavero de inicio de sesión.' },
        { picture: 'switch', text: 'Ábralo en el llavero y en Confiar elija confiar siempre.' },
        { picture: 'open', text: 'Vuelva a esta página y compruebe otra vez.' },
      ],
      linux: [
        { picture: 'fetch', text: 'Traiga el archivo de la autoridad con el botón de arriba.' },
        {
          picture: 'settings',
          text: 'En los ajustes del navegador, en certificados, autoridades: importe el archivo y confíe en él para sitios web.',
        },
        { picture: 'open', text: 'Vuelva a esta página y compruebe otra vez.' },
      ],
    },
    caution: 'Hágalo solo en la red de su propio depósito, con la consola del servidor delante.',
    moved:
      'La autoridad de este servidor llegó a su fin y hay una nueva: los dispositivos que confiaban en la anterior repiten los pasos. Lo que hay en ellos se queda en ellos.',
  },
}
