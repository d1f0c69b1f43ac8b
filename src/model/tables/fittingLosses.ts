/**
 * Loss coefficients K on the velocity in the pipe [-].
 *
 * Source: EPANET 2.2 User Manual, ch. 3, minor loss coefficients, except where a line says otherwise.
 */
export const FITTING_LOSS = {
  /** Printed for a swing valve; taken for a spring valve too, whose maker prints a flow coefficient. */
  checkValve: 2.5,
  elbow: 0.9,
  elbow45: 0.4,
  teeThroughRun: 0.6,
  teeThroughBranch: 1.8,
  gateValve: 0.2,
  globeValve: 10,
  entrance: 0.5,
  exit: 1,
  /** A turn and two changes of bore: engineering estimate, no source. */
  pitlessAdapter: 1.5,
  /** Bore 0.80 of the pipe's: see `insertFittingLoss`. */
  insertFitting: 0.76,
} as const;
