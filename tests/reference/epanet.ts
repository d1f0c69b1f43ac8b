/**
 * The EPANET 2.2 engine, a network solver of the US EPA, as somebody outside this project.
 *
 * It takes g = 32.2 ft/s² where we take 9.80665 m/s² (0.08 % less friction), and Swamee-Jain for the friction factor
 * where we solve Colebrook-White (EPANET 2.2 User Manual, ch. 12).
 */
import { Project, Workspace } from 'epanet-js';
import { feet } from '../../src/model/units.ts';

/** Kinematic viscosity that a VISCOSITY of 1.0 stands for: 1.1e-5 ft²/s, in m²/s. */
export const EPANET_VISCOSITY = 1.1e-5 * feet(1) ** 2;

const workspace = new Workspace();
export const loadEpanet = () => workspace.loadModule();

/** @param viscosity  as a multiple of `EPANET_VISCOSITY` */
export const options = (headloss: 'H-W' | 'D-W', viscosity = 1) =>
  `[OPTIONS]\nUNITS GPM\nHEADLOSS ${headloss}\nVISCOSITY ${viscosity}\nSPECIFIC GRAVITY 1.0\nTRIALS 200\nACCURACY 0.0000001\n[TIMES]\nDURATION 0\n[END]\n`;

/** Solves a network in EPANET's own text and reads from it while it is open. */
export function solved<T>(network: string, read: (project: Project) => T): T {
  workspace.writeFile('net.inp', network);
  const project = new Project(workspace);
  project.open('net.inp', 'net.rpt', 'net.bin');
  project.openH();
  project.initH(0);
  project.runH();
  const answer = read(project);
  project.closeH();
  project.close();
  return answer;
}
