import highsModule, { type Highs, type HighsCallbackMap, type Model } from 'highs';
import type {
  Column,
  LinearProgram,
  LinearSolution,
  OpenProgram,
  RowBounds,
  SolveLimits,
} from './linear-program.js';

// The package's types describe its CommonJS build; the ES module exports the loader itself.
const loadRuntime = highsModule as unknown as typeof highsModule.default;

/**
 * Solves with HiGHS (WebAssembly), to a gap of zero: what is called optimal is proven so.
 * Deterministic for a given program unless a time limit or `shouldStop` ends it.
 */
export async function solveWithHighs(
  program: LinearProgram,
  limits: SolveLimits = {},
): Promise<LinearSolution> {
  const open = await openWithHighs(program);
  try {
    return open.solve(limits);
  } finally {
    open.close();
  }
}

/** How HiGHS works on a program; the defaults suit a single solve. */
export interface HighsMethod {
  /** Primal simplex continues from the last basis when columns are added. */
  readonly simplex?: 'primal' | 'dual';
  readonly presolve?: boolean;
  readonly solver?: 'choose' | 'simplex' | 'ipm';
  /** Without it an interior-point solution stays inside the optimal face: duals less extreme, found sooner. */
  readonly crossover?: boolean;
}

/** Loaded once: compiling it takes longer than most small programs. */
let runtime: Promise<Highs> | null = null;

/** Memory of WebAssembly never shrinks; a runtime grown past this is not used for the next program. */
const RUNTIME_BYTES_KEPT = 256 * 1024 * 1024;

/** Opens a program in HiGHS, to be solved again as columns and rows are added. */
export async function openWithHighs(program: LinearProgram, method: HighsMethod = {}): Promise<OpenProgram> {
  runtime ??= loadRuntime();
  const highs = await runtime;
  const model = highs.createModel(modelOf(program));
  model.options.set({
    // Callbacks of the integer solver need the flag; the console must stay empty.
    output_flag: true,
    log_to_console: false,
    mip_abs_gap: 1e-6,
    presolve: method.presolve === false ? 'off' : 'choose',
    simplex_strategy: method.simplex === 'primal' ? 4 : 1,
    solver: method.solver ?? 'choose',
    run_crossover: method.crossover === false ? 'off' : 'on',
  });
  const integers = program.columns.some((column) => column.integer);
  return {
    addColumns: (columns) => {
      const { starts, indices, values } = packed(columns, (column) => column.rows);
      model.addCols({
        cost: Float64Array.from(columns, (column) => column.cost),
        lower: Float64Array.from(columns, (column) => column.lower),
        upper: Float64Array.from(columns, (column) => column.upper),
        matrix: {
          format: 'csc',
          numRows: model.getDimensions().numRows,
          numCols: columns.length,
          starts,
          indices,
          values,
        },
      });
    },
    addRows: (rows) => {
      const { starts, indices, values } = packed(rows, (row) => row.columns);
      model.addRows({
        ...rowBounds(rows),
        matrix: {
          format: 'csr',
          numRows: rows.length,
          numCols: model.getDimensions().numCols,
          starts,
          indices,
          values,
        },
      });
    },
    removeColumns: (columns) => void model.deleteCols({ kind: 'set', indices: Int32Array.from(columns) }),
    solve: (limits = {}) => {
      try {
        return solve(highs, model, integers, limits);
      } catch (crash) {
        runtime = null;
        throw crash;
      }
    },
    close: () => {
      model.dispose();
      if (highs.memoryBytes > RUNTIME_BYTES_KEPT) runtime = null;
    },
  };
}

function modelOf({ columns, rows }: LinearProgram) {
  const { lower: rowLower, upper: rowUpper } = rowBounds(rows);
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: Float64Array.from(columns, (column) => column.cost),
    colLower: Float64Array.from(columns, (column) => column.lower),
    colUpper: Float64Array.from(columns, (column) => column.upper),
    rowLower,
    rowUpper,
    matrix: {
      format: 'csc' as const,
      numRows: rows.length,
      numCols: columns.length,
      ...packed(columns, (column) => column.rows),
    },
    ...(columns.some((column) => column.integer)
      ? { integrality: Int32Array.from(columns, (column) => (column.integer ? 1 : 0)) }
      : {}),
  };
}

const rowBounds = (rows: readonly RowBounds[]) => ({
  lower: Float64Array.from(rows, (row) => row.lower),
  upper: Float64Array.from(rows, (row) => row.upper),
});

function packed<Line extends Pick<Column, 'coefficients'>>(
  lines: readonly Line[],
  indicesOf: (line: Line) => readonly number[],
) {
  const starts = new Int32Array(lines.length + 1);
  lines.forEach((line, at) => {
    starts[at + 1] = starts[at] + line.coefficients.length;
  });
  const indices = new Int32Array(starts[lines.length]);
  const values = new Float64Array(starts[lines.length]);
  lines.forEach((line, at) => {
    indices.set(indicesOf(line), starts[at]);
    values.set(line.coefficients, starts[at]);
  });
  return { starts, indices, values };
}

/** The runtime refuses Infinity as an option. */
const NO_LIMIT_SECONDS = 1e9;
const NO_LIMIT_NODES = 2 ** 31 - 1;

function solve(highs: Highs, model: Model, integers: boolean, limits: SolveLimits): LinearSolution {
  // The limit counts over all runs of a model.
  model.zeroAllClocks();
  model.options.set({
    time_limit: limits.timeLimitSeconds ?? NO_LIMIT_SECONDS,
    mip_max_nodes: limits.mostNodes ?? NO_LIMIT_NODES,
    mip_rel_gap: limits.relativeGap ?? 0,
  });
  if (limits.start)
    model.setSolution({
      indices: Int32Array.from(limits.start.columns),
      values: Float64Array.from(limits.start.values),
    });
  model.run(callbacks(highs, integers, limits));
  const solution = solutionOf(highs, model, integers);
  if (!limits.relativeGap || solution.status !== 'optimal') return solution;
  const { values, objective } = solution;
  return { status: 'feasible', values, objective, bound: Number(model.info.get('mip_dual_bound')) };
}

function callbacks(highs: Highs, integers: boolean, limits: SolveLimits): HighsCallbackMap {
  const { shouldStop, onImproved, onBound } = limits;
  const type = highs.constants.callbackType;
  const stop = (event: { interrupt(): void }): undefined => {
    if (shouldStop?.()) event.interrupt();
  };
  return {
    ...(shouldStop && {
      [type.simplexInterrupt]: stop,
      [type.ipmInterrupt]: stop,
      [type.mipInterrupt]: stop,
    }),
    ...(integers &&
      onImproved && {
        [type.mipImprovingSolution]: ({ data }: ImprovedEvent): undefined => {
          if (data.mip_solution) onImproved(data.mip_solution, data.objective_function_value ?? Number.NaN);
        },
      }),
    ...(integers &&
      onBound && {
        [type.mipLogging]: ({ data }: ImprovedEvent): undefined => {
          if (data.mip_dual_bound !== undefined) onBound(data.mip_dual_bound);
        },
      }),
  };
}

interface ImprovedEvent {
  readonly data: {
    readonly mip_solution?: Float64Array;
    readonly objective_function_value?: number;
    readonly mip_dual_bound?: number;
  };
}

function solutionOf(highs: Highs, model: Model, integers: boolean): LinearSolution {
  const status = highs.constants.modelStatus;
  const reached = model.getModelStatus();
  switch (reached) {
    case status.optimal: {
      const { colValue: values, rowDual, colDual } = model.getSolution();
      const duals = integers ? null : rowDual;
      return {
        status: 'optimal',
        values,
        objective: model.getObjectiveValue(),
        duals,
        reducedCosts: integers ? null : colDual,
      };
    }
    case status.empty:
      return { status: 'no answer', why: 'the program has no columns', bound: Number.NEGATIVE_INFINITY };
    case status.infeasible:
      return { status: 'infeasible' };
    case status.unbounded:
      return { status: 'unbounded' };
    default:
      return unfinished(highs, model, integers, `HiGHS ended with model status ${reached}`);
  }
}

/** Stopped early: an integer model may still have a feasible point and a proven bound. */
function unfinished(highs: Highs, model: Model, integers: boolean, why: string): LinearSolution {
  const bound = integers ? Number(model.info.get('mip_dual_bound')) : Number.NEGATIVE_INFINITY;
  const found = model.info.get('primal_solution_status') === highs.constants.solutionStatus.feasible;
  return integers && found
    ? {
        status: 'feasible',
        values: model.getSolution().colValue,
        objective: model.getObjectiveValue(),
        bound,
      }
    : { status: 'no answer', why, bound };
}
