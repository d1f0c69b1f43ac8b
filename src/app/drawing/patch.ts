/**
 * Writes a list of shapes into a live SVG element and touches only what changed.
 *
 * A shape that is the same object as last time is skipped whole; an attribute with an equal value is not written;
 * elements are found again by key, moved only where the order changed, and removed when their key is gone.
 */
import type { Attributes, Shape } from '../../draw/scene.ts';
import { attributeText } from '../../draw/svg.ts';

const SVG = 'http://www.w3.org/2000/svg';

interface Node {
  shape: Shape;
  readonly element: SVGElement;
  /** The text of a shape that has text: kept apart from its element children. */
  text: Text | null;
  children: readonly Node[];
}

export interface Patcher {
  /** Brings the element's children in step with the shapes. */
  patch(shapes: readonly Shape[]): void;
}

/** @param root  an empty element of the SVG namespace that nobody else fills */
export function createPatcher(root: Element): Patcher {
  let nodes: readonly Node[] = [];
  return {
    patch(shapes) {
      nodes = patchChildren(root, null, nodes, shapes);
    },
  };
}

/** @param old  in the order in which they stand */
function patchChildren(
  parent: Element,
  after: ChildNode | null,
  old: readonly Node[],
  shapes: readonly Shape[],
): readonly Node[] {
  if (updateInPlace(old, shapes)) return old;
  const byKey = new Map(old.map((node) => [node.shape.key, node]));
  const next = shapes.map((shape) => {
    const found = byKey.get(shape.key);
    return found !== undefined && found.shape.tag === shape.tag
      ? update(found, shape)
      : create(parent.ownerDocument, shape);
  });
  // What is gone leaves first, so that what stays is not moved past it.
  const kept = new Set(next);
  for (const node of old) if (!kept.has(node)) node.element.remove();
  let previous = after;
  for (const { element } of next) {
    const here = previous === null ? parent.firstChild : previous.nextSibling;
    if (here !== element) parent.insertBefore(element, here);
    previous = element;
  }
  return next;
}

/**
 * The same keys in the same order, as in nearly every frame of a drag: nothing is inserted, moved or removed. Where
 * that turns out not to be so, what was brought up to date until then is passed by when it is met again.
 */
function updateInPlace(nodes: readonly Node[], shapes: readonly Shape[]): boolean {
  if (nodes.length !== shapes.length) return false;
  return nodes.every((node, i) => {
    const before = node.shape;
    const shape = shapes[i];
    if (shape === before) return true;
    if (shape === undefined || shape.key !== before.key || shape.tag !== before.tag) return false;
    update(node, shape);
    return true;
  });
}

function create(document: Document, shape: Shape): Node {
  const element = document.createElementNS(SVG, shape.tag);
  if (shape.d !== undefined) element.setAttribute('d', shape.d);
  for (const [name, value] of Object.entries(shape.attrs)) element.setAttribute(name, attributeText(name, value));
  const node: Node = { shape, element, text: null, children: [] };
  writeText(node, shape.text);
  if (shape.children !== undefined) node.children = patchChildren(element, node.text, node.children, shape.children);
  return node;
}

function update(node: Node, shape: Shape): Node {
  const before = node.shape;
  if (before === shape) return node;
  if (before.d !== shape.d) {
    if (shape.d === undefined) node.element.removeAttribute('d');
    else node.element.setAttribute('d', shape.d);
  }
  if (before.attrs !== shape.attrs) patchAttributes(node.element, before.attrs, shape.attrs);
  if (before.text !== shape.text) writeText(node, shape.text);
  if (before.children !== shape.children) {
    node.children = patchChildren(node.element, node.text, node.children, shape.children ?? []);
  }
  node.shape = shape;
  return node;
}

function patchAttributes(element: SVGElement, before: Attributes, after: Attributes): void {
  for (const name in after) {
    const value = after[name];
    const was = before[name];
    if (value === undefined || value === was) continue;
    const text = attributeText(name, value);
    // A number that moved by less than the last written digit writes the same text.
    if (was === undefined || text !== attributeText(name, was)) element.setAttribute(name, text);
  }
  for (const name in before) if (!(name in after)) element.removeAttribute(name);
}

function writeText(node: Node, text: string | undefined): void {
  if (text === undefined || text === '') {
    node.text?.remove();
    node.text = null;
  } else if (node.text === null) {
    node.text = node.element.ownerDocument.createTextNode(text);
    node.element.prepend(node.text);
  } else {
    node.text.data = text;
  }
}
