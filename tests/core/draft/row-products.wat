;; Products of rows of numbers, four at a time; see core/draft/row-products.ts.
(module
  (memory (export "memory") 1)
  (func (export "forwards") (param $out i32) (param $weights i32) (param $values i32) (param $bytes i32) (param $rows i32)
    (local $at i32) (local $sum v128) (local $other v128)
    (loop $row
      (local.set $sum (v128.const f32x4 0 0 0 0))
      (local.set $other (v128.const f32x4 0 0 0 0))
      (local.set $at (i32.const 0))
      (loop $four
        (local.set $sum (f32x4.add (local.get $sum) (f32x4.mul
          (v128.load (i32.add (local.get $weights) (local.get $at)))
          (v128.load (i32.add (local.get $values) (local.get $at))))))
        (local.set $other (f32x4.add (local.get $other) (f32x4.mul
          (v128.load offset=16 (i32.add (local.get $weights) (local.get $at)))
          (v128.load offset=16 (i32.add (local.get $values) (local.get $at))))))
        (local.set $at (i32.add (local.get $at) (i32.const 32)))
        (br_if $four (i32.lt_u (local.get $at) (local.get $bytes))))
      (local.set $sum (f32x4.add (local.get $sum) (local.get $other)))
      (f32.store (local.get $out) (f32.add (f32.load (local.get $out)) (f32.add
        (f32.add (f32x4.extract_lane 0 (local.get $sum)) (f32x4.extract_lane 1 (local.get $sum)))
        (f32.add (f32x4.extract_lane 2 (local.get $sum)) (f32x4.extract_lane 3 (local.get $sum))))))
      (local.set $out (i32.add (local.get $out) (i32.const 4)))
      (local.set $weights (i32.add (local.get $weights) (local.get $bytes)))
      (local.set $rows (i32.sub (local.get $rows) (i32.const 1)))
      (br_if $row (local.get $rows))))
  (func (export "backwards") (param $slope i32) (param $weights i32) (param $slopes i32) (param $values i32) (param $valueSlopes i32) (param $bytes i32) (param $rows i32)
    (local $at i32) (local $by v128)
    (loop $row
      (local.set $by (f32x4.splat (f32.load (local.get $slope))))
      (local.set $at (i32.const 0))
      (loop $four
        (v128.store (i32.add (local.get $slopes) (local.get $at)) (f32x4.add
          (v128.load (i32.add (local.get $slopes) (local.get $at)))
          (f32x4.mul (local.get $by) (v128.load (i32.add (local.get $values) (local.get $at))))))
        (v128.store (i32.add (local.get $valueSlopes) (local.get $at)) (f32x4.add
          (v128.load (i32.add (local.get $valueSlopes) (local.get $at)))
          (f32x4.mul (local.get $by) (v128.load (i32.add (local.get $weights) (local.get $at))))))
        (local.set $at (i32.add (local.get $at) (i32.const 16)))
        (br_if $four (i32.lt_u (local.get $at) (local.get $bytes))))
      (local.set $slope (i32.add (local.get $slope) (i32.const 4)))
      (local.set $weights (i32.add (local.get $weights) (local.get $bytes)))
      (local.set $slopes (i32.add (local.get $slopes) (local.get $bytes)))
      (local.set $rows (i32.sub (local.get $rows) (i32.const 1)))
      (br_if $row (local.get $rows)))))
