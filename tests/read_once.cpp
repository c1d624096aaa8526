// SPDX-License-Identifier: MIT
// Nothing of its own: what is compiled with this file is the headers that all tests share.
