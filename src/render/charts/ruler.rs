//! The gluten ruler.
