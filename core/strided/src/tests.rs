use std::ptr::null_mut;

use super::*;

fn slant() -> &'static Function {
    Function::named("slant_range_nm").unwrap()
}

fn input(values: &[f64], stride: isize) -> Input {
    Input { data: values.as_ptr().cast(), stride }
}

fn output(values: &mut [f64], stride: isize) -> Output {
    Output { data: values.as_mut_ptr().cast(), stride }
}

/// The answers for one point by itself, which an array gives to the last bit.
fn alone<const I: usize, const O: usize>(function: &Function, point: [f64; I]) -> [f64; O] {
    let mut answers = [[0.0]; O];
    let inputs = point.each_ref().map(|value| input(std::slice::from_ref(value), 8));
    let outputs = answers.each_mut().map(|value| output(value, 8));
    assert_eq!(unsafe { run(function, 1, &inputs, &outputs, null_mut()) }, 0);
    answers.map(|[value]| value)
}

fn slant_alone(ground_nm: f64, height_ft: f64) -> f64 {
    let [slant_nm] = alone(slant(), [ground_nm, height_ft]);
    slant_nm
}

/// More than two blocks of copied operands, the last one not full.
const COUNT: usize = 2 * BLOCK + 37;

fn ground(index: usize) -> f64 {
    0.5 * index as f64
}

#[test]
fn strides_may_be_zero_or_negative() {
    let grounds: Vec<f64> = (0..COUNT).map(ground).collect();
    let mut slants = vec![0.0; COUNT];
    let backwards = Input { data: (&raw const grounds[COUNT - 1]).cast(), stride: -8 };
    let operands = ([backwards, input(&[30_000.0], 0)], [output(&mut slants, 8)]);
    assert_eq!(unsafe { run(slant(), COUNT, &operands.0, &operands.1, null_mut()) }, 0);
    for (index, slant_nm) in slants.iter().enumerate() {
        assert_eq!(*slant_nm, slant_alone(ground(COUNT - 1 - index), 30_000.0));
    }
}

/// In long blocks, wherever the memory begins: the first block is shortened to end where a line of the cache does.
#[test]
fn memory_may_begin_at_any_place_of_a_cache_line() {
    const MANY: usize = 2 * LONG_BLOCK + 37;
    let observe = Function::named("observe").unwrap();
    let station = [61.0, -12.0, 420.0, -8.0];
    let point = |index: usize| {
        let part = |factor: f64| (index as f64 * factor).fract();
        // Some at the station, far away, or nowhere.
        let latitude_deg = if index % 500 == 7 { 61.0 } else { 58.0 + 6.0 * part(0.618_033_988_7) };
        let longitude_deg = if index % 500 == 7 { -12.0 } else { -17.0 + 10.0 * part(0.754_877_666_2) };
        let altitude_ft = if index % 900 == 100 { 1e6 } else { 40_000.0 * part(0.569_840_290_9) };
        [if index % 700 == 300 { -60.0 } else { latitude_deg }, longitude_deg, altitude_ft]
    };
    let expected: Vec<[u64; 4]> = (0..MANY)
        .map(|index| {
            let [latitude_deg, longitude_deg, altitude_ft] = point(index);
            let [lat, lon, elevation, declination] = station;
            let given = [lat, lon, elevation, declination, latitude_deg, longitude_deg, altitude_ft];
            let inputs = given.each_ref().map(|value| input(std::slice::from_ref(value), 8));
            let mut answers = [[0.0]; 4];
            let outputs = answers.each_mut().map(|value| output(value, 8));
            unsafe { run(observe, 1, &inputs, &outputs, null_mut()) };
            answers.map(|[value]| value.to_bits())
        })
        .collect();
    for places in 0..LINE {
        let mut columns: [Vec<f64>; 7] = std::array::from_fn(|_| vec![0.0; MANY + LINE]);
        for index in 0..MANY {
            for (column, value) in columns.iter_mut().zip(point(index)) {
                column[places + index] = value;
            }
        }
        let mut status = vec![7; MANY];
        let stations = station.each_ref().map(|value| input(std::slice::from_ref(value), 0));
        let points: [Input; 3] = std::array::from_fn(|place| input(&columns[place][places..], 8));
        let inputs: Vec<Input> = stations.into_iter().chain(points).collect();
        let outputs: Vec<Output> =
            columns[3..].iter_mut().map(|column| output(&mut column[places..], 8)).collect();
        let failures = unsafe { run(observe, MANY, &inputs, &outputs, status.as_mut_ptr()) };
        let refused = (0..MANY).filter(|index| index % 900 == 100).count();
        assert_eq!(failures, refused);
        for index in 0..MANY {
            let found: [u64; 4] = std::array::from_fn(|place| columns[3 + place][places + index].to_bits());
            assert_eq!(found, expected[index], "{places} {index}");
            assert_eq!(status[index] != 0, index % 900 == 100);
        }
    }
}

#[test]
fn an_output_may_be_an_input_and_memory_unaligned() {
    let mut bytes = vec![0_u8; 8 * COUNT + 1];
    for (index, value) in bytes[1..].chunks_exact_mut(8).enumerate() {
        let ground_nm = if index == 200 { -5.0 } else { ground(index) };
        value.copy_from_slice(&ground_nm.to_ne_bytes());
    }
    let mut status = vec![7; COUNT];
    let data = bytes[1..].as_mut_ptr();
    let operands = ([Input { data, stride: 8 }, input(&[9000.0], 0)], [Output { data, stride: 8 }]);
    assert_eq!(unsafe { run(slant(), COUNT, &operands.0, &operands.1, status.as_mut_ptr()) }, 1);
    for (index, value) in bytes[1..].chunks_exact(8).enumerate() {
        let value = f64::from_ne_bytes(value.try_into().unwrap());
        if index == 200 {
            assert!(value.is_nan() && status[index] == lubberline::value::Quantity::GroundDistance.code());
        } else {
            assert_eq!((value, status[index]), (slant_alone(ground(index), 9000.0), 0));
        }
    }
}

#[test]
fn members_of_structures_are_reached_in_place() {
    let mut fixes: Vec<[f64; 3]> = (0..COUNT).map(|index| [ground(index), 9000.0, 0.0]).collect();
    let data: *mut u8 = fixes.as_mut_ptr().cast();
    let member = |place: usize| Input { data: data.wrapping_add(8 * place), stride: 24 };
    let result = Output { data: data.wrapping_add(16), stride: 24 };
    assert!(in_step(COUNT, &[member(0), member(1)], &[result]));
    assert_eq!(unsafe { run(slant(), COUNT, &[member(0), member(1)], &[result], null_mut()) }, 0);
    for (index, fix) in fixes.iter().enumerate() {
        assert_eq!(*fix, [ground(index), 9000.0, slant_alone(ground(index), 9000.0)]);
    }
}

/// What each point writes the next one reads: as a running sum does it.
#[test]
fn a_point_may_read_what_the_one_before_wrote() {
    let mut slants = vec![f64::NAN; COUNT + 1];
    slants[0] = 1.0;
    let data: *mut u8 = slants.as_mut_ptr().cast();
    let operands = (
        [Input { data, stride: 8 }, input(&[1000.0], 0)],
        [Output { data: data.wrapping_add(8), stride: 8 }],
    );
    assert_eq!(unsafe { run(slant(), COUNT, &operands.0, &operands.1, null_mut()) }, 0);
    for pair in slants.windows(2) {
        assert_eq!(pair[1], slant_alone(pair[0], 1000.0));
    }
}

/// All points read and write one place: as a reduction does it.
#[test]
fn one_place_may_gather_all_points() {
    let mut slant_nm = [1.0];
    let heights: Vec<f64> = (0..COUNT).map(|index| 10.0 * index as f64).collect();
    let place = output(&mut slant_nm, 0);
    let operands = ([Input { data: place.data, stride: 0 }, input(&heights, 8)], [place]);
    assert_eq!(unsafe { run(slant(), COUNT, &operands.0, &operands.1, null_mut()) }, 0);
    let expected = heights.iter().fold(1.0, |ground_nm, height_ft| slant_alone(ground_nm, *height_ft));
    assert_eq!(slant_nm[0], expected);
}

#[test]
fn outputs_that_overlap_are_written_point_by_point() {
    let inverse = Function::named("geodesic_inverse").unwrap();
    let longitudes: Vec<f64> = (0..COUNT).map(|index| 0.1 + 0.1 * index as f64).collect();
    let mut memory = vec![0.0; COUNT + 2];
    let data: *mut u8 = memory.as_mut_ptr().cast();
    let shifted = |places: usize| Output { data: data.wrapping_add(8 * places), stride: 8 };
    let inputs = [input(&[10.0], 0), input(&[0.0], 0), input(&[20.0], 0), input(&longitudes, 8)];
    let outputs = [shifted(0), shifted(1), shifted(2)];
    assert_eq!(unsafe { run(inverse, COUNT, &inputs, &outputs, null_mut()) }, 0);
    for (index, longitude_deg) in longitudes.iter().enumerate() {
        let [distance_nm, _, _] = alone(inverse, [10.0, 0.0, 20.0, *longitude_deg]);
        assert_eq!(memory[index], distance_nm, "what the point itself wrote last stands");
    }
}

#[test]
fn nothing_to_do_and_nowhere_to_write_are_fine() {
    let nowhere = Output { data: null_mut(), stride: 8 };
    let none = Input { data: std::ptr::null(), stride: 8 };
    assert_eq!(unsafe { run(slant(), 0, &[none, none], &[nowhere], null_mut()) }, 0);
    let some = input(&[1.0], 0);
    assert_eq!(unsafe { run(slant(), 500, &[some, some], &[nowhere], null_mut()) }, 0);
    assert_eq!(unsafe { run(slant(), 5, &[some], &[nowhere], null_mut()) }, 5, "too few operands");
}

/// A function that panics at a negative number, for a test of the guard.
fn touchy([value]: [f64; 1]) -> f64 {
    assert!(value >= 0.0, "this panic is part of a test");
    2.0 * value
}

/// In long blocks, in place, and in copied ones; at the edges of both.
#[test]
fn a_panic_costs_one_point() {
    let function = Function {
        name: "touchy",
        inputs: &["value"],
        outputs: &["twice"],
        run: |inputs, outputs| {
            outputs[0] = touchy([inputs[0]]);
            Ok(())
        },
        block: |inputs, outputs, statuses| {
            for index in 0..statuses.len() {
                (outputs[0][index], statuses[index]) = (touchy([inputs[0][index]]), 0);
            }
        },
    };
    const MANY: usize = 2 * LONG_BLOCK + 37;
    let cases = [
        (1, 0, vec![140]),
        (1, 1, vec![0, LONG_BLOCK - 2, LONG_BLOCK - 1, LONG_BLOCK + 50, MANY - 1]),
        (2, 0, vec![5, BLOCK - 1, BLOCK, 2 * BLOCK + 3]),
        (2, 1, vec![MANY - 1]),
    ];
    for (spread, shift, bad) in cases {
        let mut values = vec![-7.0; spread * MANY + shift];
        let place = |index: usize| spread * index + shift;
        for index in 0..MANY {
            values[place(index)] = if bad.contains(&index) { -1.0 } else { ground(index) };
        }
        let (mut twice, mut status) = (vec![-7.0; spread * MANY + shift], vec![7; MANY]);
        let stride = (8 * spread).cast_signed();
        let operands = ([input(&values[shift..], stride)], [output(&mut twice[shift..], stride)]);
        let failures = unsafe { run(&function, MANY, &operands.0, &operands.1, status.as_mut_ptr()) };
        assert_eq!(failures, bad.len());
        for index in 0..MANY {
            if bad.contains(&index) {
                assert!(twice[place(index)].is_nan() && status[index] == INTERNAL_ERROR);
            } else {
                assert_eq!((twice[place(index)], status[index]), (2.0 * values[place(index)], 0));
            }
        }
        assert!((0..twice.len()).all(|at| (at >= shift && (at - shift) % spread == 0) || twice[at] == -7.0));
    }
}

/// One value for all points may lie anywhere, beside columns that are worked on in place.
#[test]
fn one_value_for_all_may_be_unaligned() {
    const MANY: usize = LONG_BLOCK + 52;
    let grounds: Vec<f64> = (0..MANY).map(ground).collect();
    let mut slants = vec![0.0; MANY];
    // At one of two neighbouring bytes it is.
    for place in [0, 1] {
        let mut bytes = [0; 9];
        bytes[place..place + 8].copy_from_slice(&30_000.0_f64.to_ne_bytes());
        let height = Input { data: bytes[place..].as_ptr(), stride: 0 };
        let operands = ([input(&grounds, 8), height], [output(&mut slants, 8)]);
        assert_eq!(unsafe { run(slant(), MANY, &operands.0, &operands.1, null_mut()) }, 0);
        for (ground_nm, slant_nm) in grounds.iter().zip(&slants) {
            assert_eq!(*slant_nm, slant_alone(*ground_nm, 30_000.0));
        }
    }
}

/// What all points read, one of them writes: those before it read what was there, those after it what it wrote.
#[test]
fn one_value_for_all_may_be_overwritten() {
    const PLACE: usize = 5;
    let grounds: Vec<f64> = (0..COUNT).map(ground).collect();
    let mut slants = vec![0.0; COUNT];
    slants[PLACE] = 9000.0;
    let data: *mut u8 = slants.as_mut_ptr().cast();
    let height = Input { data: data.wrapping_add(8 * PLACE), stride: 0 };
    let operands = ([input(&grounds, 8), height], [Output { data, stride: 8 }]);
    assert_eq!(unsafe { run(slant(), COUNT, &operands.0, &operands.1, null_mut()) }, 0);
    for (index, ground_nm) in grounds.iter().enumerate() {
        let height_ft = if index <= PLACE { 9000.0 } else { slants[PLACE] };
        assert_eq!(slants[index], slant_alone(*ground_nm, height_ft), "{index}");
    }
}
