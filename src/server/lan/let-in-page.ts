import { letInWords } from './lan-words.ts'
import { html, pageOf, pickLanguage } from './plain-page.ts'

/** Where a device gives the code; a page without anything to load, since what it needs is not there yet. */
export function letInPage(accepted: string): string {
  const language = pickLanguage(accepted)
  const words = letInWords[language]
  return pageOf(
    language,
    words.title,
    `<p>${html(words.why)}</p>
<p id="tab" class="note" hidden>${html(words.installFirst)}</p>
<form id="form">
<label>${html(words.code)}<input name="code" required autocomplete="one-time-code" autocapitalize="characters" spellcheck="false" maxlength="12"></label>
<label>${html(words.device)}<input name="device" required maxlength="80" autocomplete="off"></label>
<button>${html(words.send)}</button>
<p id="said" role="status"></p>
</form>
<p><a href="/bring-over">${html(words.moved)}</a></p>
<script src="/let-in.js" data-done="${html(words.done)}" data-away="${html(words.away)}" data-wrong="${html(words.wrong)}" data-wait="${html(words.wait)}" defer></script>`,
  )
}

/** The code comes in the fragment of the address, which is sent to nobody; the installed page has to be the one let in. */
export const letInScript = `'use strict'
const { done, away, wrong, wait } = document.currentScript.dataset
const form = document.getElementById('form')
const said = document.getElementById('said')
if (location.hash.length > 1) form.code.value = decodeURIComponent(location.hash.slice(1))
history.replaceState(null, '', location.pathname)
const isApple = /iPhone|iPad/.test(navigator.userAgent)
if (isApple && !navigator.standalone) document.getElementById('tab').hidden = false
form.addEventListener('submit', async (event) => {
  event.preventDefault()
  try {
    const answer = await fetch('/api/let-in', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ code: form.code.value, device: form.device.value }),
    })
    said.textContent = answer.ok ? done : answer.status === 429 ? wait : wrong
    if (answer.ok) location.replace('/')
  } catch {
    said.textContent = away
  }
})
`
