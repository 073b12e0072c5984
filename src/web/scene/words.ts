import { language } from '../language.ts'
import { type SceneWords, sceneEn } from '../messages/scene-en.ts'
import { sceneEs } from '../messages/scene-es.ts'

/** What is said in a scene, in the language of the page as it is at the time. */
export const words = (): SceneWords => (language() === 'es' ? sceneEs : sceneEn)
