import { type System, trustWords } from './lan-words.ts'
import { html, type PlainLanguage, pageOf } from './plain-page.ts'
import { stepPicture } from './step-pictures.ts'

export interface TrustFacts {
  readonly fingerprint: string
  /** Port of the encrypted address. */
  readonly port: number
  /** The name that stays when the machine's address changes. */
  readonly stable: string
  readonly isReplaced: boolean
}

const systems: readonly System[] = ['apple phone', 'android', 'windows', 'mac', 'linux']

/** How a device comes to trust this server, step by step, and what of it is still missing. */
export function trustPage(language: PlainLanguage, userAgent: string, facts: TrustFacts): string {
  const words = trustWords[language]
  const own = systemOf(userAgent)
  const steps = (system: System): string =>
    `<ol>${words.steps[system].map(({ picture, text }) => `<li>${stepPicture(picture)}<div>${html(text)}</div></li>`).join('')}</ol>`
  const others = systems
    .filter((system) => system !== own)
    .map((system) => `<details><summary>${html(words.systems[system])}</summary>${steps(system)}</details>`)
  const isProfile = own === 'apple phone'
  return pageOf(
    language,
    words.title,
    `<p>${html(words.why)}</p>
<p class="note">${html(words.caution)}</p>
${facts.isReplaced ? `<p class="note">${html(words.moved)}</p>` : ''}
<p id="state" role="status">${html(words.checking)}</p>
<p><button id="again">${html(words.again)}</button></p>
<h2>${html(words.systems[own])}</h2>
<p><a class="do" id="fetch" href="${isProfile ? '/trust/authority.mobileconfig' : '/trust/authority.crt'}">${html(isProfile ? words.fetchProfile : words.fetchFile)}</a></p>
<p>${html(words.compare)}<br><code>${facts.fingerprint}</code></p>
${steps(own)}
${others.join('\n')}
<script src="/trust/check.js" defer data-port="${facts.port}" data-stable="${html(facts.stable)}" data-reached="${html(words.reached('%'))}" data-not-fetched="${html(words.notFetched)}" data-not-trusted="${html(words.notTrusted)}" data-checking="${html(words.checking)}"></script>`,
  )
}

/** Asked of the encrypted address: it answers only to a device that trusts it. Whether the file was fetched, this browser remembers. */
export const checkScript = `'use strict'
const { port, stable, reached, notFetched, notTrusted, checking } = document.currentScript.dataset
const state = document.getElementById('state')
const fetchLink = document.getElementById('fetch')
fetchLink.addEventListener('click', () => localStorage.setItem('lapwise/fetched', 'yes'))
document.getElementById('again').addEventListener('click', check)
void check()

async function check() {
  say(checking, '')
  for (const name of [stable, location.hostname]) {
    const address = 'https://' + name + ':' + port
    if (!(await isTrusted(address))) continue
    say('', 'good')
    const [before, after] = reached.split('%')
    const link = document.createElement('a')
    link.href = link.textContent = address + '/'
    state.append(before, link, after)
    return
  }
  say(localStorage.getItem('lapwise/fetched') === null ? notFetched : notTrusted, 'bad')
}

async function isTrusted(address) {
  try {
    const answer = await fetch(address + '/lan-check', { cache: 'no-store', signal: AbortSignal.timeout(4000) })
    return answer.ok
  } catch {
    return false
  }
}

function say(text, look) {
  state.textContent = text
  state.className = look
}
`

function systemOf(userAgent: string): System {
  if (/iPhone|iPad/.test(userAgent)) return 'apple phone'
  if (/Android/.test(userAgent)) return 'android'
  if (/Windows/.test(userAgent)) return 'windows'
  return /Macintosh/.test(userAgent) ? 'mac' : 'linux'
}
