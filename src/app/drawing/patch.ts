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
  children: Map<string, Node>;
}

export interface Patcher {
  /** Brings the element's children in step with the shapes. */
  patch(shapes: readonly Shape[]): void;
}

/** @param root  an empty element of the SVG namespace that nobody else fills */
export function createPatcher(root: Element): Patcher {
  let nodes = new Map<string, Node>();
  return {
    patch(shapes) {
      nodes = patchChildren(root, null, nodes, shapes);
    },
  };
}

function patchChildren(
  parent: Element,
  after: ChildNode | null,
  old: Map<string, Node>,
  shapes: readonly Shape[],
): Map<string, Node> {
  if (updateInPlace(old, shapes)) return old;
  const next = new Map<string, Node>();
  for (const shape of shapes) {
    const found = old.get(shape.key);
    next.set(
      shape.key,
      found !== undefined && found.shape.tag === shape.tag ? update(found, shape) : create(parent.ownerDocument, shape),
    );
  }
  // What is gone leaves first, so that what stays is not moved past it.
  for (const [key, node] of old) if (next.get(key) !== node) node.element.remove();
  let previous = after;
  for (const node of next.values()) {
    const here = previous === null ? parent.firstChild : previous.nextSibling;
    if (here !== node.element) parent.insertBefore(node.element, here);
    previous = node.element;
  }
  return next;
}

/** The same keys in the same order, as in nearly every frame of a drag: nothing is inserted, moved or removed. */
function updateInPlace(nodes: Map<string, Node>, shapes: readonly Shape[]): boolean {
  if (nodes.size !== shapes.length) return false;
  let i = 0;
  for (const [key, node] of nodes) {
    const shape = shapes[i++];
    if (shape === undefined || shape.key !== key || shape.tag !== node.shape.tag) return false;
  }
  i = 0;
  for (const node of nodes.values()) {
    const shape = shapes[i++];
    if (shape !== undefined && shape !== node.shape) update(node, shape);
  }
  return true;
}

function create(document: Document, shape: Shape): Node {
  const element = document.createElementNS(SVG, shape.tag);
  if (shape.d !== undefined) element.setAttribute('d', shape.d);
  for (const [name, value] of Object.entries(shape.attrs)) element.setAttribute(name, attributeText(name, value));
  const node: Node = { shape, element, text: null, children: new Map() };
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
