import { Router } from 'express'
import { facts, type Placed } from '../../facts/boxes.js'

/** A fact as the API lists it. */
const asJson = ({ key, fact, list }: Placed) => ({
  key,
  label: fact.label,
  question: fact.question,
  unit: 'unit' in fact ? fact.unit : null,
  choices: ('choices' in fact ? (fact.choices ?? []) : []).map(({ value, label, drawing }) => ({
    value,
    label,
    drawing: drawing ?? null,
  })),
  link: fact.link,
  howToFindOut: fact.findOut.map(({ how }) => how).join(' '),
  needsPower: fact.findOut.every(({ power }) => power !== 'none'),
  many: list !== null,
  address: fact.address,
})

/** Every fact that a check may hold: what it is called, how it is asked for, how it is found out. */
export function factsRoutes(): Router {
  const router = Router()
  router.get('/api/facts', (_request, response) => {
    response.json(facts.map(asJson))
  })
  return router
}
