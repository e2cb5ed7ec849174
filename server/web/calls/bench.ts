import { Router } from 'express'
import { assessCase } from '../../chain/assess.js'
import { prepareCase } from '../../chain/case/case.js'
import { benchSupply } from '../../plan/bench/benchSupply.js'
import { discharge } from '../../plan/bench/discharge.js'
import { dummyLoad } from '../../plan/bench/dummyLoad.js'
import { insulationAnswer } from '../../plan/bench/insulation.js'
import { leakage } from '../../plan/bench/leakage.js'
import { offLoad } from '../../plan/bench/offLoad.js'
import { reform } from '../../plan/bench/reform.js'
import { planFirstPower } from '../../plan/planFirstPower.js'
import { tell } from '../../words/tell.js'
import { parse } from '../parse.js'
import {
  benchSupplySchema,
  dischargeSchema,
  dummyLoadSchema,
  firstPowerSchema,
  insulationSchema,
  leakageSchema,
  offLoadSchema,
  reformSchema,
} from '../schemas/bench.js'

/** What is worked out at the bench: loads, limits, discharge, reforming, off-load volts, leakage, test readings. */
export function benchRoutes(): Router {
  const router = Router()
  router.post('/api/bench-supply', (request, response) => {
    const { rails, ...rest } = parse(benchSupplySchema, request.body)
    const asked = rails.map(({ voltageV, currentA, tolerancePercent }) => ({
      voltageV,
      currentA,
      tolerance: tolerancePercent == null ? null : tolerancePercent / 100,
    }))
    response.json(tell(benchSupply({ rails: asked, ...rest })))
  })
  router.post('/api/dummy-load', (request, response) => {
    response.json(tell(dummyLoad(parse(dummyLoadSchema, request.body))))
  })
  router.post('/api/discharge', (request, response) => {
    response.json(tell(discharge(parse(dischargeSchema, request.body))))
  })
  router.post('/api/reform', (request, response) => {
    response.json(tell(reform(parse(reformSchema, request.body))))
  })
  router.post('/api/off-load', (request, response) => {
    response.json(tell(offLoad(parse(offLoadSchema, request.body))))
  })
  router.post('/api/leakage', (request, response) => {
    response.json(tell(leakage(parse(leakageSchema, request.body))))
  })
  router.post('/api/insulation', (request, response) => {
    const { scheme, ...readings } = parse(insulationSchema, request.body)
    response.json(tell(insulationAnswer({ schemes: scheme, ...readings })))
  })
  router.post('/api/first-power', (request, response) => {
    const { check, ...options } = parse(firstPowerSchema, request.body)
    const of = prepareCase(check)
    response.json(tell(planFirstPower(of, assessCase(of), options)))
  })
  return router
}
