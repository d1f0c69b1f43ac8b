/** The questions that a report leaves open, as one asks a driller, an owner or an office. */
import type { Question } from '../../reading/questions.ts';

export const QUESTIONS: Readonly<Record<Question, string>> = {
  depth: 'How deep is the well?',
  sounded: 'How deep is it today, by a weighted line?',
  datum: 'Do the depths count from the ground or from the top of the casing?',
  casing: 'Which casing is it: size and material?',
  casingInside: 'How wide is the casing inside, at its top?',
  casingBottom: 'How far down does the casing go?',
  intake: 'Is there open rock below the casing, or a screen?',
  screen: 'From what depth to what depth is the screen?',
  holeDiameter: 'How wide is the hole below the casing?',
  inflow: 'At what depth does most of the water come in?',
  static: 'How deep does the water stand with no pump running?',
  whenRead: 'On which day was the water level read?',
  lowest: 'How deep does it stand in the driest season?',
  test: 'Was the well pumped: at which flow, how far did the water fall, after how many hours?',
  testDrawdown: 'Which flow and which drawdown did the test have?',
  pumped: 'The yield is from air: has anybody pumped it and measured the level?',
  frost: 'How deep does the ground freeze? The building office knows.',
  frostFrom: 'Who says how deep the frost goes: the local code, or an estimate?',
  top: 'Does the pipe leave below frost by a pitless adapter, or through a seal on top?',
  hanging: 'What is in the well now: a pump, an adapter, nothing?',
  oldPump: 'How deep does the pump hang, and what power stands on its plate?',
  demand: 'How many people live there, and how much runs at once at the busiest time?',
  distance: 'How long is the pipe from the well to the house?',
  rise: 'How much higher than the ground at the well is the tank?',
  line: 'Which pipe goes to the house: what is printed on it?',
  tank: 'How big is the pressure tank?',
  wireRun: 'How many feet of cable is it from the electric panel to the well?',
  voltage: 'Which voltage does the supply have, and how many phases?',
  wires: 'Does the old motor have two power wires or three?',
};

/** The cable is asked for in the reader's own length. */
export function sayQuestion(question: Question, units: 'us' | 'metric'): string {
  return units === 'metric'
    ? QUESTIONS[question].replace('How many feet of cable', 'How many metres of cable')
    : QUESTIONS[question];
}
