/** `test` and `describe`, listing what they are given: the forms that the unit tests of the model use, and no more. */
export function collector(expect) {
  const tests = [];
  const seen = new Map();
  let path = [];
  let hooks = { beforeAll: [], beforeEach: [], afterEach: [] };

  const called = (args) => args.find((each) => typeof each === 'function');
  const idOf = (title) => {
    const name = [...path, title].join(' > ');
    const before = seen.get(name) ?? 0;
    seen.set(name, before + 1);
    return before === 0 ? name : `${name} (${before + 1})`;
  };

  function test(title, ...rest) {
    const body = called(rest);
    const { beforeAll, beforeEach, afterEach } = hooks;
    tests.push({
      id: idOf(String(title?.name || title)),
      run: async () => {
        for (const hook of beforeAll) await (hook.done ??= hook.body());
        for (const hook of beforeEach) await hook();
        await body({ expect });
        for (const hook of afterEach) await hook();
      },
    });
  }

  function describe(title, ...rest) {
    const outer = [path, hooks];
    path = [...path, String(title?.name || title)];
    hooks = Object.fromEntries(Object.entries(hooks).map(([kind, list]) => [kind, [...list]]));
    called(rest)();
    [path, hooks] = outer;
  }

  /** A row that is a list is spread, any other is handed over as it is. */
  const each =
    (one) =>
    (rows) =>
    (title, ...rest) => {
      const body = called(rest);
      rows.forEach((row, index) => {
        const values = Array.isArray(row) ? row : [row];
        one(`${title} ${index + 1}`, (...given) => body(...values, ...given));
      });
    };

  test.each = each(test);
  test.skip = () => {};
  describe.each = each(describe);
  const api = {
    test,
    it: test,
    describe,
    expect,
    beforeAll: (body) => hooks.beforeAll.push({ body }),
    beforeEach: (body) => hooks.beforeEach.push(body),
    afterEach: (body) => hooks.afterEach.push(body),
    afterAll: () => {},
  };
  return { api, tests };
}
