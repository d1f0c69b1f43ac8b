/**
 * A scene is a list of plain shapes, keyed and nested only where a group moves or a frame crops.
 * The serializer and the browser's patcher read the same list, so an exported picture cannot differ from the screen.
 */
export type Tag = 'g' | 'svg' | 'path' | 'rect' | 'line' | 'circle' | 'text' | 'tspan' | 'title' | 'desc';

export type Attributes = Readonly<Record<string, string | number>>;

export interface Shape {
  /** A word that stays the same while dragging ("dropPipe/left"); unique among its siblings, never an index. */
  readonly key: string;
  readonly tag: Tag;
  /** The outline of a path: beside the attributes, which thus need no copy to take it in. */
  readonly d?: string | undefined;
  readonly attrs: Attributes;
  readonly text?: string | undefined;
  readonly children?: readonly Shape[] | undefined;
}
